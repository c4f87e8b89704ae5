namespace HandsFree.Audio.Tests.Signals;

/// <summary>Sounds made for tests, and what is measured on them.</summary>
internal static class Signal
{
    /// <summary>A sine of the given peak.</summary>
    public static float[] Sine(double hertz, int rate, double seconds, double peak = 0.5)
    {
        float[] samples = new float[(int)Math.Round(rate * seconds)];
        for (int i = 0; i < samples.Length; i++)
        {
            samples[i] = (float)(peak * Math.Sin(2 * Math.PI * hertz * i / rate));
        }

        return samples;
    }

    /// <summary>Amplitude and phase (radians, against a sine that starts at sample 0) of one frequency.</summary>
    public static (double Amplitude, double Phase) Component(ReadOnlySpan<float> samples, int from, int to, double hertz, int rate)
    {
        double cosine = 0;
        double sine = 0;
        for (int i = from; i < to; i++)
        {
            cosine += samples[i] * Math.Cos(2 * Math.PI * hertz * i / rate);
            sine += samples[i] * Math.Sin(2 * Math.PI * hertz * i / rate);
        }

        cosine *= 2.0 / (to - from);
        sine *= 2.0 / (to - from);
        return (Math.Sqrt((cosine * cosine) + (sine * sine)), Math.Atan2(cosine, sine));
    }

    public static double Rms(ReadOnlySpan<float> samples)
    {
        double sum = 0;
        foreach (float sample in samples)
        {
            sum += (double)sample * sample;
        }

        return Math.Sqrt(sum / samples.Length);
    }

    /// <summary>A buzz with the harmonics of a voice at 120 Hz, swelling and fading: enough of a vowel for a detector of energy.</summary>
    public static float[] Vowel(double seconds, double peak = 0.3)
    {
        float[] samples = new float[(int)Math.Round(16_000 * seconds)];
        for (int i = 0; i < samples.Length; i++)
        {
            double sum = 0;
            for (int harmonic = 1; harmonic <= 20; harmonic++)
            {
                sum += Math.Sin(2 * Math.PI * 120 * harmonic * i / 16_000) / harmonic;
            }

            samples[i] = (float)(peak / 2 * sum * Math.Sin(Math.PI * i / samples.Length));
        }

        return samples;
    }
}
