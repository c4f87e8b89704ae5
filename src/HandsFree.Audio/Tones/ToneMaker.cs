using HandsFree.Audio.Levels;

namespace HandsFree.Audio.Tones;

/// <summary>Makes short tones of exactly known length, for signals that time is counted by.</summary>
public static class ToneMaker
{
    /// <summary>A sine that begins and ends softly (raised cosine), so that it does not click.</summary>
    /// <param name="hertz">Frequency, above 0 and below 8,000 Hz.</param>
    /// <param name="length">Length, edges included; rounded to a sample (62.5 µs).</param>
    /// <param name="peakDbfs">Peak in dBFS, 0 or less.</param>
    /// <param name="edge">Length of each edge; at most half the tone. 5 ms if left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static float[] Make(double hertz, TimeSpan length, double peakDbfs, TimeSpan? edge = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(hertz);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(hertz, AudioClip.SampleRate / 2.0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(peakDbfs, 0);
        ArgumentOutOfRangeException.ThrowIfLessThan(length, TimeSpan.Zero);
        float[] tone = new float[SampleTime.Samples(length)];
        int edgeSamples = SampleTime.Samples(edge ?? TimeSpan.FromMilliseconds(5));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(edgeSamples, tone.Length / 2, nameof(edge));
        double peak = LevelMeter.ToAmplitude(peakDbfs);
        for (int i = 0; i < tone.Length; i++)
        {
            int fromNearestEnd = Math.Min(i, tone.Length - 1 - i);
            double rise = fromNearestEnd >= edgeSamples ? 1 : 0.5 - (0.5 * Math.Cos(Math.PI * fromNearestEnd / edgeSamples));
            tone[i] = (float)(peak * rise * Math.Sin(2 * Math.PI * hertz * i / AudioClip.SampleRate));
        }

        return tone;
    }
}
