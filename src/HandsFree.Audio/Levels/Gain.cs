namespace HandsFree.Audio.Levels;

/// <summary>Changes levels in place.</summary>
public static class Gain
{
    /// <summary>Multiplies each sample.</summary>
    public static void Apply(Span<float> samples, double factor)
    {
        foreach (ref float sample in samples)
        {
            sample = (float)(sample * factor);
        }
    }

    /// <summary>Brings the RMS to a level in dBFS; silence stays silence.</summary>
    public static void ToRms(Span<float> samples, double rmsDbfs)
    {
        double rms = Math.Sqrt(LevelMeter.MeanSquare(samples));
        if (rms > 0)
        {
            Apply(samples, LevelMeter.ToAmplitude(rmsDbfs) / rms);
        }
    }
}
