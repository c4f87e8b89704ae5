using System.Numerics;

namespace HandsFree.Speech.Small;

/// <summary>Log-mel values: 32 bands of Slaney's mel scale (M. Slaney, Auditory Toolbox, 1998) from 60 to 3800 Hz, triangles of equal
/// area, a Hann window of 25 ms every 10 ms. The training computes the same in Python; test vectors hold the two together.</summary>
internal static class LogMel
{
    /// <summary>Values of one frame.</summary>
    internal const int Bands = 32;

    /// <summary>Samples from one frame to the next: 10 ms at 16 kHz.</summary>
    internal const int Hop = 160;

    private const int Window = 400;
    private const int Size = 512;
    private const int Bins = (Size / 2) + 1;
    private const double Lowest = 60, Highest = 3800, Rate = 16000;

    /// <summary>Natural, at 1000 Hz: below it the scale is linear, above it logarithmic.</summary>
    private static readonly double Step = Math.Log(6.4) / 27;
    private static readonly double[] Hann = MakeWindow();
    private static readonly float[,] Filters = MakeFilters();
    private static readonly Complex[] Turns = [.. Enumerable.Range(0, Size / 2).Select(k => Complex.FromPolarCoordinates(1, -2 * Math.PI * k / Size))];

    /// <summary>How many frames so many samples give: each needs 512 of them.</summary>
    internal static int Frames(int samples) => samples < Size ? 0 : ((samples - Size) / Hop) + 1;

    /// <summary>The values, frame after frame.</summary>
    /// <param name="samples">16 kHz mono in [-1, 1].</param>
    /// <returns><see cref="Frames"/> times <see cref="Bands"/> values: log10 of the power in 16-bit steps, plus 2. The 1 that is added
    /// to the power is near the noise of rounding to 16 bits, so that digital silence is the quietest room.</returns>
    internal static float[] Of(ReadOnlySpan<float> samples)
    {
        int frames = Frames(samples.Length);
        float[] values = new float[frames * Bands];
        var spectrum = new Complex[Size];
        for (int frame = 0; frame < frames; frame++)
        {
            ReadOnlySpan<float> piece = samples.Slice(frame * Hop, Size);
            for (int i = 0; i < Size; i++)
            {
                spectrum[i] = piece[i] * 32767.0 * Hann[i];
            }

            Transform(spectrum);
            for (int band = 0; band < Bands; band++)
            {
                double power = 0;
                for (int bin = 0; bin < Bins; bin++)
                {
                    float weight = Filters[band, bin];
                    if (weight > 0)
                    {
                        Complex c = spectrum[bin];
                        power += weight * ((c.Real * c.Real) + (c.Imaginary * c.Imaginary));
                    }
                }

                values[(frame * Bands) + band] = (float)(Math.Log10(power + 1) + 2);
            }
        }

        return values;
    }

    /// <summary>The window in the middle of the 512 samples.</summary>
    private static double[] MakeWindow()
    {
        double[] window = new double[Size];
        for (int i = 0; i < Window; i++)
        {
            window[((Size - Window) / 2) + i] = 0.5 - (0.5 * Math.Cos(2 * Math.PI * i / Window));
        }

        return window;
    }

    private static float[,] MakeFilters()
    {
        double low = ToMel(Lowest), high = ToMel(Highest);
        double[] edges = [.. Enumerable.Range(0, Bands + 2).Select(i => ToHertz(low + ((high - low) * i / (Bands + 1))))];
        var filters = new float[Bands, Bins];
        for (int band = 0; band < Bands; band++)
        {
            for (int bin = 0; bin < Bins; bin++)
            {
                double hertz = bin * Rate / Size;
                double up = (hertz - edges[band]) / (edges[band + 1] - edges[band]);
                double down = (edges[band + 2] - hertz) / (edges[band + 2] - edges[band + 1]);
                filters[band, bin] = (float)(Math.Max(0, Math.Min(up, down)) * 2 / (edges[band + 2] - edges[band]));
            }
        }

        return filters;
    }

    private static double ToMel(double hertz) => hertz < 1000 ? hertz * 3 / 200 : 15 + (Math.Log(hertz / 1000) / Step);

    private static double ToHertz(double mel) => mel < 15 ? mel * 200 / 3 : 1000 * Math.Exp((mel - 15) * Step);

    /// <summary>The fast Fourier transform in place (Cooley and Tukey 1965), decimation in time.</summary>
    private static void Transform(Complex[] x)
    {
        for (int i = 1, j = 0; i < Size; i++)
        {
            int bit = Size >> 1;
            for (; (j & bit) != 0; bit >>= 1)
            {
                j ^= bit;
            }

            j ^= bit;
            if (i < j)
            {
                (x[i], x[j]) = (x[j], x[i]);
            }
        }

        for (int length = 2; length <= Size; length <<= 1)
        {
            int half = length / 2, stride = Size / length;
            for (int start = 0; start < Size; start += length)
            {
                for (int k = 0; k < half; k++)
                {
                    Complex a = x[start + k], b = x[start + k + half] * Turns[k * stride];
                    x[start + k] = a + b;
                    x[start + k + half] = a - b;
                }
            }
        }
    }
}
