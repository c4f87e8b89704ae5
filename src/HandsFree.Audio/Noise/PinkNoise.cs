using HandsFree.Audio.Levels;

namespace HandsFree.Audio.Noise;

/// <summary>Noise that loses 3 dB an octave, the same for the same seed. White Gaussian noise through Paul Kellet's "refined" pink filter
/// (music-dsp archive; made for 44.1 kHz: at 16 kHz the slope is checked by a test from 60 Hz to 6 kHz).</summary>
public static class PinkNoise
{
    /// <summary>Makes noise of a given level.</summary>
    /// <param name="samples">Length in samples at 16 kHz.</param>
    /// <param name="seed">Chooses the noise.</param>
    /// <param name="rmsDbfs">Its RMS in dBFS, exactly; above about -12 dBFS peaks pass full scale.</param>
    public static float[] Make(int samples, int seed, double rmsDbfs)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(samples);
        float[] noise = WhiteNoise.Make(samples, seed);
        double b0 = 0, b1 = 0, b2 = 0, b3 = 0, b4 = 0, b5 = 0, b6 = 0;
        foreach (ref float sample in noise.AsSpan())
        {
            double white = sample;
            b0 = (0.99886 * b0) + (white * 0.0555179);
            b1 = (0.99332 * b1) + (white * 0.0750759);
            b2 = (0.96900 * b2) + (white * 0.1538520);
            b3 = (0.86650 * b3) + (white * 0.3104856);
            b4 = (0.55000 * b4) + (white * 0.5329522);
            b5 = (-0.7616 * b5) - (white * 0.0168980);
            sample = (float)(b0 + b1 + b2 + b3 + b4 + b5 + b6 + (white * 0.5362));
            b6 = white * 0.115926;
        }

        Gain.ToRms(noise, rmsDbfs);
        return noise;
    }
}
