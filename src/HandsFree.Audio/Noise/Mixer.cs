using HandsFree.Audio.Levels;

namespace HandsFree.Audio.Noise;

/// <summary>Puts noise under speech.</summary>
public static class Mixer
{
    private const float HighestPeak = 0.99f;

    /// <summary>Speech with noise under all of it. Where the sum would pass full scale, all of it is made softer: the ratio stays.</summary>
    /// <param name="speech">16 kHz mono; its level is that of the speech without its pauses.</param>
    /// <param name="noise">16 kHz mono, not silent; repeated from its start where it is shorter than the speech.</param>
    /// <param name="snrDb">Speech level minus noise level (RMS of the noise used) in dB.</param>
    /// <exception cref="ArgumentException">Noise that is empty or silent under speech that isn't.</exception>
    public static float[] AddNoise(ReadOnlySpan<float> speech, ReadOnlySpan<float> noise, double snrDb)
    {
        double speechLevel = SpeechLevel.ActiveDbfs(speech);
        float[] under = Repeat(noise, speech.Length);
        if (speech.Length > 0 && LevelMeter.RmsDbfs(under) <= LevelMeter.Floor)
        {
            throw new ArgumentException("The noise is silent.", nameof(noise));
        }

        Gain.ToRms(under, speechLevel - snrDb);
        float peak = 0;
        for (int i = 0; i < under.Length; i++)
        {
            under[i] += speech[i];
            peak = Math.Max(peak, Math.Abs(under[i]));
        }

        if (peak > 1)
        {
            Gain.Apply(under, HighestPeak / peak);
        }

        return under;
    }

    private static float[] Repeat(ReadOnlySpan<float> noise, int length)
    {
        float[] result = new float[length];
        for (int at = 0; at < length && !noise.IsEmpty; at += noise.Length)
        {
            noise[..Math.Min(noise.Length, length - at)].CopyTo(result.AsSpan(at));
        }

        return result;
    }
}
