namespace HandsFree.Audio.Devices;

/// <summary>The frame in which sound goes to and from devices: 20 ms, 16 kHz mono, samples in [-1, 1].</summary>
public static class SoundFrame
{
    /// <summary>Samples of a frame.</summary>
    public const int Samples = AudioClip.SampleRate / 50;

    /// <summary>Its length, 20 ms.</summary>
    public static TimeSpan Duration { get; } = SampleTime.Of(Samples);
}
