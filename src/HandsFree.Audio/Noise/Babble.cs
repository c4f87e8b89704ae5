namespace HandsFree.Audio.Noise;

/// <summary>Six voices that talk at the same time, chosen by a seed.</summary>
public static class Babble
{
    private const int Talkers = 6;

    /// <summary>Makes it; each voice as loud as its recording, a sixth of it.</summary>
    /// <param name="length">Samples.</param>
    /// <param name="seed">Chooses who talks and where each begins.</param>
    /// <param name="voices">Recordings to choose from, none empty; at least one.</param>
    public static float[] Make(int length, int seed, IReadOnlyList<float[]> voices)
    {
        ArgumentNullException.ThrowIfNull(voices);
        Random random = new(seed);
        float[] sum = new float[length];
        for (int talker = 0; talker < Talkers; talker++)
        {
            int next = random.Next(voices.Count);
            int at = random.Next(voices[next].Length);
            for (int i = 0; i < length; i++)
            {
                sum[i] += voices[next][at] / Talkers;
                if (++at == voices[next].Length)
                {
                    (next, at) = (random.Next(voices.Count), 0);
                }
            }
        }

        return sum;
    }
}
