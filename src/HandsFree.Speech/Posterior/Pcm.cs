namespace HandsFree.Speech.Posterior;

/// <summary>Samples for the native engines.</summary>
internal static class Pcm
{
    /// <summary>Floats in [-1, 1] to 16 bits; what lies outside is clipped, what is no number becomes 0.</summary>
    internal static short[] To16Bits(ReadOnlySpan<float> samples)
    {
        var result = new short[samples.Length];
        for (int i = 0; i < samples.Length; i++)
        {
            float sample = samples[i];
            result[i] = float.IsNaN(sample) ? (short)0 : (short)Math.Round(Math.Clamp(sample, -1f, 1f) * short.MaxValue);
        }

        return result;
    }

    /// <summary>Level of the loudest 100 ms, in decibels below full scale; minus infinity for digital silence.</summary>
    internal static double LoudestDecibels(ReadOnlySpan<short> samples)
    {
        const int Window = 1600;
        double loudest = 0;
        for (int start = 0; start < samples.Length; start += Window)
        {
            ReadOnlySpan<short> window = samples[start..Math.Min(samples.Length, start + Window)];
            double sum = 0;
            foreach (short sample in window)
            {
                sum += (double)sample * sample;
            }

            loudest = Math.Max(loudest, sum / window.Length);
        }

        return 10 * Math.Log10(loudest / ((double)short.MaxValue * short.MaxValue));
    }
}
