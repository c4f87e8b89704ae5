using HandsFree.Audio.Resampling;
using NAudio.Wave;

namespace HandsFree.Audio.Wav;

/// <summary>Turns the stored samples into 16 kHz mono, by NAudio's converters and our resampler.</summary>
internal static class SampleDecoder
{
    /// <summary>Float samples a little over full scale are clipped; beyond this (12 dB over) they are taken for another scale.</summary>
    private const float LargestFloat = 4;

    public static AudioClip Decode(Stream stream, WavLayout layout)
    {
        WaveFormat format = layout.Format;
        stream.Position = layout.DataStart;
        ISampleProvider source = new RawSourceWaveStream(stream, format).ToSampleProvider();
        float[] mono = new float[layout.Frames];
        float[] block = new float[4096 * format.Channels];
        int frame = 0;
        while (frame < mono.Length)
        {
            int wanted = Math.Min(block.Length, (mono.Length - frame) * format.Channels);
            int got = source.Read(block.AsSpan(0, wanted)) / format.Channels;
            if (got == 0)
            {
                throw new WavFormatException($"truncated: {mono.Length} sample frames announced, {frame} could be read");
            }

            Mix(block.AsSpan(0, got * format.Channels), format.Channels, mono.AsSpan(frame, got), frame);
            frame += got;
        }

        float[] samples = Resampler.To16Kilohertz(mono, format.SampleRate);
        foreach (ref float sample in samples.AsSpan())
        {
            sample = Math.Clamp(sample, -1f, 1f);
        }

        return new AudioClip(samples, format.SampleRate, format.Channels, format.BitsPerSample);
    }

    private static void Mix(ReadOnlySpan<float> block, int channels, Span<float> mono, int firstFrame)
    {
        for (int i = 0; i < mono.Length; i++)
        {
            float sample = channels == 1 ? block[i] : (block[2 * i] + block[(2 * i) + 1]) / 2;
            mono[i] = float.IsFinite(sample)
                ? sample
                : throw new WavFormatException($"damaged: sample {firstFrame + i} is not a finite number");
            if (Math.Abs(sample) > LargestFloat)
            {
                throw new WavFormatException(FormattableString.Invariant(
                    $"sample {firstFrame + i} is {sample:0.##}; float samples between -1 and 1 are needed"));
            }
        }
    }
}
