namespace HandsFree.Audio.Levels;

/// <summary>How far speech stands above the noise around it, from one piece of sound with its quiet: the level of the speech against the
/// quietest of its short frames. Speech leaves gaps, and the endpointer's quiet is before and after it.</summary>
public static class SpeechToNoise
{
    /// <summary>What is reported where there is no noise at all, dB.</summary>
    public const double Most = 40;

    private const int FrameSamples = AudioClip.SampleRate / 50;

    /// <summary>The noise is the mean of the quietest tenth of the frames.</summary>
    private const double QuietShare = 0.1;

    /// <summary>Speech above noise, dB, 0 to <see cref="Most"/>; 0 where nothing stands out. Frames of digital silence are padding and
    /// count only where there is nothing else.</summary>
    /// <param name="samples">16 kHz mono.</param>
    public static double Decibels(ReadOnlySpan<float> samples)
    {
        List<double> powers = [];
        for (int start = 0; start + FrameSamples <= samples.Length; start += FrameSamples)
        {
            double power = LevelMeter.MeanSquare(samples.Slice(start, FrameSamples));
            if (power > 0)
            {
                powers.Add(power);
            }
        }

        if (powers.Count == 0)
        {
            return 0;
        }

        powers.Sort();
        double noise = powers.Take(Math.Max(1, (int)(powers.Count * QuietShare))).Average();
        double speech = Math.Pow(10, SpeechLevel.ActiveDbfs(samples) / 10);
        return Math.Clamp(10 * Math.Log10(Math.Max(speech - noise, noise * 1e-9) / noise), 0, Most);
    }
}
