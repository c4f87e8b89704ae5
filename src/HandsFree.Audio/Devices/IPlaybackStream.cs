namespace HandsFree.Audio.Devices;

/// <summary>Sound to one device, pushed. Used by one thread at a time.</summary>
public interface IPlaybackStream : IDisposable
{
    /// <summary>Name of the device; the stream never changes to another.</summary>
    string Device { get; }

    /// <summary>From "written" to the air, as the device says it, for what was written last.</summary>
    TimeSpan Latency { get; }

    /// <summary>Writes one frame; waits while the device has enough.</summary>
    /// <param name="frame"><see cref="SoundFrame.Samples"/> samples.</param>
    /// <returns>Null, or why it can't be played; then the stream is at its end.</returns>
    SoundFault? Write(ReadOnlySpan<float> frame);

    /// <summary>Drops what was written and not played yet.</summary>
    void Flush();

    /// <summary>Looks, without waiting, whether the device is still there.</summary>
    SoundFault? Look();
}
