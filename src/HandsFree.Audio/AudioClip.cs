namespace HandsFree.Audio;

/// <summary>A piece of sound in the one form that everything inside works on: 16 kHz, mono, floating point.</summary>
/// <param name="Samples">Samples in [-1, 1] at <see cref="SampleRate"/>; may be empty.</param>
/// <param name="SourceRate">Sample rate in hertz that the recording had.</param>
/// <param name="SourceChannels">Channels that the recording had, 1 or 2.</param>
/// <param name="SourceBits">Bits of one stored sample: 8, 16, 24, 32 or 64.</param>
public sealed record AudioClip(float[] Samples, int SourceRate = AudioClip.SampleRate, int SourceChannels = 1, int SourceBits = 16)
{
    /// <summary>Samples in a second, inside: 16,000.</summary>
    public const int SampleRate = 16_000;

    /// <summary>Length in time.</summary>
    public TimeSpan Duration => SampleTime.Of(Samples.Length);
}
