using NAudio.Wave;

namespace HandsFree.Audio.Wav;

/// <summary>Where the samples lie in a RIFF/WAVE file and how they are coded; checked against the stream's true length.</summary>
/// <param name="Format">The coding, with WAVE_FORMAT_EXTENSIBLE resolved to PCM or IEEE float.</param>
/// <param name="DataStart">Byte position of the first sample.</param>
/// <param name="DataLength">Bytes of samples, a whole number of sample frames.</param>
internal sealed record WavLayout(WaveFormat Format, long DataStart, long DataLength)
{
    /// <summary>Sample frames: one sample for each channel.</summary>
    public long Frames => DataLength / Format.BlockAlign;
}
