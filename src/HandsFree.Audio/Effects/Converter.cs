using HandsFree.Audio.Levels;

namespace HandsFree.Audio.Effects;

/// <summary>What a badly set input stage does on the way to numbers; all in a new array, cut off at full scale.</summary>
public static class Converter
{
    /// <summary>Amplified until the peak would lie this far above full scale, and cut off there. Silence stays silence.</summary>
    /// <param name="samples">Any mono sound.</param>
    /// <param name="overdriveDecibel">dB above full scale; 0 just reaches it.</param>
    public static float[] Clip(ReadOnlySpan<float> samples, double overdriveDecibel)
    {
        float peak = 0;
        foreach (float sample in samples)
        {
            peak = Math.Max(peak, Math.Abs(sample));
        }

        return Limited(samples, peak == 0 ? 1 : LevelMeter.ToAmplitude(overdriveDecibel) / peak, 0);
    }

    /// <summary>Speech at a level; what would pass full scale is cut off.</summary>
    /// <param name="samples">16 kHz mono.</param>
    /// <param name="dbfs">Level of the speech without its pauses, dBFS RMS.</param>
    public static float[] AtLevel(ReadOnlySpan<float> samples, double dbfs) =>
        Limited(samples, LevelMeter.ToAmplitude(dbfs - SpeechLevel.ActiveDbfs(samples)), 0);

    /// <summary>With a constant added.</summary>
    /// <param name="samples">Any mono sound.</param>
    /// <param name="offset">Share of full scale, -1 to 1.</param>
    public static float[] Offset(ReadOnlySpan<float> samples, double offset) => Limited(samples, 1, offset);

    private static float[] Limited(ReadOnlySpan<float> samples, double factor, double offset)
    {
        float[] result = new float[samples.Length];
        for (int i = 0; i < result.Length; i++)
        {
            result[i] = (float)Math.Clamp((samples[i] * factor) + offset, -1, 1);
        }

        return result;
    }
}
