namespace HandsFree.Audio.Levels;

/// <summary>The level of speech without its pauses: the mean power of the frames that lie less than 15.9 dB below it, and of the 200 ms after
/// each. The margin and the hang-over are those of ITU-T P.56 method B; the frames of 10 ms in place of its envelope make this an
/// approximation of it (from memory, not checked against the recommendation's test vectors).</summary>
public static class SpeechLevel
{
    private const int FrameSamples = AudioClip.SampleRate / 100;
    private const int HangoverFrames = 20;
    private const double MarginDecibel = 15.9;
    private const int MostRounds = 20;

    /// <summary>The active level in dBFS, not below <see cref="LevelMeter.Floor"/>.</summary>
    /// <param name="samples">16 kHz mono; steady noise below the speech is left out, quiet too.</param>
    public static double ActiveDbfs(ReadOnlySpan<float> samples)
    {
        double[] powers = FramePowers(samples);
        if (powers.Length == 0)
        {
            return LevelMeter.RmsDbfs(samples);
        }

        double active = powers.Average();
        for (int round = 0; round < MostRounds; round++)
        {
            double next = PowerAbove(powers, active / Math.Pow(10, MarginDecibel / 10));
            if (Math.Abs(next - active) <= active * 1e-6)
            {
                break;
            }

            active = next;
        }

        return LevelMeter.ToDecibel(Math.Sqrt(active));
    }

    private static double[] FramePowers(ReadOnlySpan<float> samples)
    {
        double[] powers = new double[samples.Length / FrameSamples];
        for (int i = 0; i < powers.Length; i++)
        {
            powers[i] = LevelMeter.MeanSquare(samples.Slice(i * FrameSamples, FrameSamples));
        }

        return powers;
    }

    private static double PowerAbove(double[] powers, double threshold)
    {
        double sum = 0;
        int count = 0;
        int hangover = 0;
        foreach (double power in powers)
        {
            hangover = power >= threshold ? HangoverFrames : hangover - 1;
            if (hangover >= 0)
            {
                sum += power;
                count++;
            }
        }

        return count == 0 ? 0 : sum / count;
    }
}
