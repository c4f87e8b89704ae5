namespace HandsFree.Audio.Levels;

/// <summary>Measures levels.</summary>
public static class LevelMeter
{
    /// <summary>What silence measures: -120 dBFS.</summary>
    public const double Floor = -120;

    /// <summary>Absolute values from here on count as full scale: 16 bit coding ends one step below 1.</summary>
    private const float FullScale = 32_766f / 32_768f;

    /// <summary>A single sample at full scale may be chance; so many in a row are clipped (common practice, no source).</summary>
    private const int ShortestClippedRun = 3;

    /// <summary>RMS, peak and clipping over all samples.</summary>
    public static Level Measure(ReadOnlySpan<float> samples)
    {
        float peak = 0;
        int clipped = 0;
        int run = 0;
        foreach (float sample in samples)
        {
            float size = Math.Abs(sample);
            peak = Math.Max(peak, size);
            run = size >= FullScale ? run + 1 : 0;
            clipped += run == ShortestClippedRun ? ShortestClippedRun : run > ShortestClippedRun ? 1 : 0;
        }

        return new Level(RmsDbfs(samples), ToDecibel(peak), samples.IsEmpty ? 0 : (double)clipped / samples.Length);
    }

    /// <summary>Root mean square in dBFS, not below <see cref="Floor"/>.</summary>
    public static double RmsDbfs(ReadOnlySpan<float> samples) => ToDecibel(Math.Sqrt(MeanSquare(samples)));

    /// <summary>From an amplitude to dBFS, not below <see cref="Floor"/>.</summary>
    public static double ToDecibel(double amplitude) => Math.Max(Floor, 20 * Math.Log10(Math.Max(amplitude, 1e-9)));

    /// <summary>From dBFS to an amplitude.</summary>
    public static double ToAmplitude(double decibel) => Math.Pow(10, decibel / 20);

    internal static double MeanSquare(ReadOnlySpan<float> samples)
    {
        double sum = 0;
        foreach (float sample in samples)
        {
            sum += (double)sample * sample;
        }

        return samples.IsEmpty ? 0 : sum / samples.Length;
    }
}
