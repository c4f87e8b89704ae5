using System.Numerics;

namespace HandsFree.Audio.Endpointing;

/// <summary>How periodic sound is: the largest normalised autocorrelation at the periods of a human voice. Every English word has a voiced
/// sound; breath, wind and most room noise have none.</summary>
internal static class Voicing
{
    private const int ShortestPeriod = AudioClip.SampleRate / 400;
    private const int LongestPeriod = AudioClip.SampleRate / 70;

    /// <summary>From 0 (noise) to 1 (a steady tone).</summary>
    /// <param name="samples">More than twice the longest period (458 samples).</param>
    public static double Of(ReadOnlySpan<float> samples)
    {
        double best = 0;
        int length = samples.Length - LongestPeriod;
        ReadOnlySpan<float> fixedPart = samples[..length];
        double fixedPower = Dot(fixedPart, fixedPart);
        for (int lag = ShortestPeriod; lag <= LongestPeriod; lag++)
        {
            ReadOnlySpan<float> moved = samples.Slice(lag, length);
            double power = Math.Sqrt(fixedPower * Dot(moved, moved));
            if (power > 1e-12)
            {
                best = Math.Max(best, Dot(fixedPart, moved) / power);
            }
        }

        return best;
    }

    private static float Dot(ReadOnlySpan<float> a, ReadOnlySpan<float> b)
    {
        Vector<float> sum = Vector<float>.Zero;
        int i = 0;
        for (; i <= a.Length - Vector<float>.Count; i += Vector<float>.Count)
        {
            sum += new Vector<float>(a[i..]) * new Vector<float>(b[i..]);
        }

        float rest = 0;
        for (; i < a.Length; i++)
        {
            rest += a[i] * b[i];
        }

        return Vector.Sum(sum) + rest;
    }
}
