using NAudio.Wave;

namespace HandsFree.Audio.Wav;

/// <summary>Writes 16 kHz mono PCM of 16 bits.</summary>
public static class WavWriter
{
    /// <summary>Writes a file, replacing one that is there.</summary>
    /// <param name="path">The file.</param>
    /// <param name="samples">16 kHz mono; clipped to [-1, 1] and rounded to the nearest of the 16 bit steps.</param>
    /// <exception cref="IOException">The file can't be written.</exception>
    public static void Write(string path, ReadOnlySpan<float> samples)
    {
        using FileStream stream = new(path, FileMode.Create, FileAccess.Write);
        Write(stream, samples);
    }

    /// <summary>Writes to a stream that can seek; it is closed afterwards.</summary>
    /// <param name="stream">From its present position.</param>
    /// <param name="samples">16 kHz mono; clipped to [-1, 1] and rounded to the nearest of the 16 bit steps.</param>
    public static void Write(Stream stream, ReadOnlySpan<float> samples)
    {
        short[] steps = new short[samples.Length];
        for (int i = 0; i < steps.Length; i++)
        {
            steps[i] = (short)Math.Clamp(MathF.Round(samples[i] * 32768f), short.MinValue, short.MaxValue);
        }

        using WaveFileWriter writer = new(stream, new WaveFormat(AudioClip.SampleRate, 16, 1));
        writer.WriteSamples(steps, 0, steps.Length);
    }
}
