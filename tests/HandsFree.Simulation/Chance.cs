using System.Security.Cryptography;
using System.Text;

namespace HandsFree.Simulation;

/// <summary>Seeded chance. Each thing that is drawn for has its own source, made of the seed and its name, so that more residents or
/// days change nothing in those that were there.</summary>
internal sealed class Chance(Random random)
{
    /// <summary>The source of one thing.</summary>
    public static Chance Of(int seed, params IEnumerable<object> name)
    {
        string text = string.Join('/', name.Prepend(seed).Select(part => FormattableString.Invariant($"{part}")));
        return new Chance(new Random(BitConverter.ToInt32(SHA256.HashData(Encoding.UTF8.GetBytes(text)))));
    }

    /// <summary>True with that probability.</summary>
    public bool Happens(double probability) => random.NextDouble() < probability;

    /// <summary>From one number (included) to another (excluded).</summary>
    public double Between(double least, double most) => least + ((most - least) * random.NextDouble());

    /// <summary>From one whole number to another, both included.</summary>
    public int Whole(int least, int most) => random.Next(least, most + 1);

    /// <summary>Normally distributed, by the polar method of Box and Muller.</summary>
    public double Normal(double mean, double deviation)
    {
        double radius = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble()));
        return mean + (deviation * radius * Math.Cos(2 * Math.PI * random.NextDouble()));
    }

    /// <summary>One of several.</summary>
    public T Of<T>(IReadOnlyList<T> several) => several[random.Next(several.Count)];
}
