namespace HandsFree.Audio.Echo;

/// <summary>Finds a known sound in a recording by cross-correlation.</summary>
public static class EchoFinder
{
    /// <summary>Where the sound begins in the recording.</summary>
    /// <param name="recording">16 kHz mono, not shorter than the sound.</param>
    /// <param name="sound">16 kHz mono, not silent.</param>
    /// <returns>The sample at which they are most alike, and how much: the size of the normalised correlation, 0 to 1.</returns>
    public static (int Position, double Likeness) Find(ReadOnlySpan<float> recording, ReadOnlySpan<float> sound)
    {
        double soundEnergy = Energy(sound);
        ArgumentOutOfRangeException.ThrowIfZero(soundEnergy, nameof(sound));
        double energy = recording.Length >= sound.Length ? Energy(recording[..sound.Length]) : 0;
        (int best, double most) = (0, 0);
        for (int at = 0; at + sound.Length <= recording.Length; at++)
        {
            double likeness = energy <= 1e-9 ? 0 : Math.Abs(Product(recording.Slice(at, sound.Length), sound)) / Math.Sqrt(energy * soundEnergy);
            (best, most) = likeness > most ? (at, likeness) : (best, most);
            if (at + sound.Length < recording.Length)
            {
                energy += (recording[at + sound.Length] * (double)recording[at + sound.Length]) - (recording[at] * (double)recording[at]);
            }
        }

        return (best, most);
    }

    private static double Energy(ReadOnlySpan<float> samples) => Product(samples, samples);

    private static double Product(ReadOnlySpan<float> one, ReadOnlySpan<float> other) => System.Numerics.Tensors.TensorPrimitives.Dot(one, other);
}
