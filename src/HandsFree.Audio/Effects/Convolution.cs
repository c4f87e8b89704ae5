using System.Numerics;

namespace HandsFree.Audio.Effects;

/// <summary>Linear convolution.</summary>
public static class Convolution
{
    /// <summary>Both, convolved: as long as both together less one sample; empty where one is empty.</summary>
    /// <param name="samples">The sound.</param>
    /// <param name="response">The impulse response; the work grows with the product of both lengths.</param>
    public static float[] Of(ReadOnlySpan<float> samples, ReadOnlySpan<float> response)
    {
        if (samples.IsEmpty || response.IsEmpty)
        {
            return [];
        }

        float[] result = new float[samples.Length + response.Length - 1];
        for (int tap = 0; tap < response.Length; tap++)
        {
            AddScaled(result.AsSpan(tap, samples.Length), samples, response[tap]);
        }

        return result;
    }

    private static void AddScaled(Span<float> to, ReadOnlySpan<float> from, float factor)
    {
        int i = 0;
        for (Vector<float> factors = new(factor); i <= from.Length - Vector<float>.Count; i += Vector<float>.Count)
        {
            (new Vector<float>(to[i..]) + (factors * new Vector<float>(from[i..]))).CopyTo(to[i..]);
        }

        for (; i < from.Length; i++)
        {
            to[i] += factor * from[i];
        }
    }
}
