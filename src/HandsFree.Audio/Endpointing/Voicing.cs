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
        ReadOnlySpan<float> first = samples.Slice(ShortestPeriod, length);
        double movedPower = Dot(first, first);
        for (int lag = ShortestPeriod; lag <= LongestPeriod; lag++)
        {
            double power = Math.Sqrt(fixedPower * Math.Max(movedPower, 0));
            if (power > 1e-12)
            {
                best = Math.Max(best, Dot(fixedPart, samples.Slice(lag, length)) / power);
            }

            if (lag < LongestPeriod)
            {
                movedPower += Square(samples[lag + length]) - Square(samples[lag]);
            }
        }

        return best;
    }

    private static double Square(float sample) => (double)sample * sample;

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
