namespace HandsFree.Audio.Effects;

/// <summary>What is left of a sound that went through a link of 8,000 samples a second, as a telephone or a headset's narrow-band radio link:
/// nothing above 4 kHz. A linear-phase low-pass by Kaiser's window method (Kaiser 1974): passband to 3.4 kHz, stop band from 4 kHz, 60 dB.</summary>
public static class NarrowBand
{
    /// <summary>End of the passband.</summary>
    public const double PassHertz = 3_400;

    /// <summary>Begin of the stop band.</summary>
    public const double StopHertz = 4_000;

    /// <summary>Attenuation in the stop band; the passband ripples by the same share of full scale (0.001, 0.009 dB).</summary>
    public const double StopDecibel = 60;

    private static readonly float[] Taps = Design();

    /// <summary>The filter's impulse response at 16 kHz, symmetrical, odd in length.</summary>
    public static ReadOnlySpan<float> Response => Taps;

    /// <summary>The sound through the link: as long as before and not shifted in time.</summary>
    /// <param name="samples">16 kHz mono.</param>
    public static float[] Apply(ReadOnlySpan<float> samples) =>
        samples.IsEmpty ? [] : Convolution.Of(samples, Taps).AsSpan(Taps.Length / 2, samples.Length).ToArray();

    /// <summary>Kaiser's formulas: beta = 0.1102 (A - 8.7) for A above 50 dB, and order (A - 7.95) / (2.285 times the transition in radians).</summary>
    private static float[] Design()
    {
        double beta = 0.1102 * (StopDecibel - 8.7);
        double transition = 2 * Math.PI * (StopHertz - PassHertz) / AudioClip.SampleRate;
        int half = (int)Math.Ceiling((StopDecibel - 7.95) / (2.285 * transition) / 2);
        double cutoff = (PassHertz + StopHertz) / AudioClip.SampleRate;
        float[] taps = new float[(2 * half) + 1];
        for (int i = 0; i < taps.Length; i++)
        {
            double place = i - half;
            double sinc = place == 0 ? cutoff : Math.Sin(Math.PI * cutoff * place) / (Math.PI * place);
            taps[i] = (float)(sinc * Bessel0(beta * Math.Sqrt(1 - (place / half * (place / half)))) / Bessel0(beta));
        }

        return taps;
    }

    /// <summary>Modified Bessel function of the first kind and order 0, by its power series.</summary>
    private static double Bessel0(double x)
    {
        double sum = 1;
        double term = 1;
        for (int k = 1; term > sum * 1e-16; k++)
        {
            term *= x / (2 * k) * (x / (2 * k));
            sum += term;
        }

        return sum;
    }
}
