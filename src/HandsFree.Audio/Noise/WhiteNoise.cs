namespace HandsFree.Audio.Noise;

/// <summary>White Gaussian noise of standard deviation 1, the same for the same seed.</summary>
public static class WhiteNoise
{
    /// <summary>Makes noise.</summary>
    /// <param name="samples">Length in samples.</param>
    /// <param name="seed">Chooses the noise.</param>
    public static float[] Make(int samples, int seed)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(samples);
        Random random = new(seed);
        float[] noise = new float[samples];
        foreach (ref float sample in noise.AsSpan())
        {
            // Box and Muller's transform; 1 - x keeps the logarithm from zero.
            double radius = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble()));
            sample = (float)(radius * Math.Cos(2 * Math.PI * random.NextDouble()));
        }

        return noise;
    }
}
