namespace HandsFree.Audio.Devices;

/// <summary>Sound from one device, pulled. Used by one thread at a time; needs no memory once it runs.</summary>
public interface ICaptureStream : IDisposable
{
    /// <summary>Name of the device; the stream never changes to another.</summary>
    string Device { get; }

    /// <summary>Waits for the next frame; at most half a second, the first time three.</summary>
    /// <param name="frame"><see cref="SoundFrame.Samples"/> samples; filled.</param>
    /// <param name="at">When the first sample was captured, by the device's own count of samples.</param>
    /// <returns>Null, or why there is no frame; then the stream is at its end.</returns>
    SoundFault? Read(Span<float> frame, out DateTimeOffset at);
}
