namespace HandsFree.Audio.Levels;

/// <summary>How long a sound lasts, by how its energy is spread over time: a click has all of it in a moment, a word has not.</summary>
public static class EffectiveDuration
{
    private const int FrameSamples = AudioClip.SampleRate / 100;

    /// <summary>The noise is the mean of the quietest quarter of the frames.</summary>
    private const int QuietPart = 4;

    /// <summary>Seconds: squared sum of the energies above the noise over the sum of their squares (frames of 10 ms), which is n frames for
    /// a sound of n equally strong ones; 0 where nothing stands above the noise.</summary>
    /// <param name="samples">16 kHz mono with quiet around the sound; what is outside [-1, 1] counts as full scale, what is no number as 0.
    /// Frames of digital silence are padding and tell nothing of the noise.</param>
    public static double Seconds(ReadOnlySpan<float> samples)
    {
        List<double> powers = [];
        for (int start = 0; start + FrameSamples <= samples.Length; start += FrameSamples)
        {
            double power = 0;
            foreach (float sample in samples.Slice(start, FrameSamples))
            {
                double size = float.IsNaN(sample) ? 0 : Math.Clamp(sample, -1.0, 1.0);
                power += size * size;
            }

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
        double noise = powers.Take(Math.Max(1, powers.Count / QuietPart)).Average();
        double sum = 0;
        double squares = 0;
        foreach (double power in powers.Where(p => p > noise))
        {
            sum += power - noise;
            squares += (power - noise) * (power - noise);
        }

        return squares > 0 ? sum * sum / squares * FrameSamples / AudioClip.SampleRate : 0;
    }
}
