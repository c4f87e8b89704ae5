namespace HandsFree.Benchmarks.Dictations.Saying;

/// <summary>Draws values as they come in a nursing home: most are unremarkable, about one in ten is not. The shares and spreads are made
/// up (no source); they decide how often the rules speak up, not whether a value is heard right.</summary>
internal static class LikelyValues
{
    private const double Unusual = 0.1;

    /// <summary>A value of a sign, some with what was said about the way it was taken.</summary>
    public static Measured Draw(string sign, Random random)
    {
        bool odd = random.NextDouble() < Unusual;
        return sign switch
        {
            "temperature" => Temperature(random, odd),
            "pulse" => new(sign, odd ? Either(random, 44, 56, 102, 138) : Around(random, 76, 10), Ways: Sometimes(random, 0.05, "uneven")),
            "respirations" => new(sign, odd ? Either(random, 9, 11, 22, 32) : Around(random, 17, 2)),
            "blood pressure" => Pressure(random, odd),
            "oxygen" => new(sign, odd ? Between(random, 84, 91) : Math.Min(100, Around(random, 96, 1.5)), Ways: Sometimes(random, 0.2, "on room air", "on oxygen")),
            "weight" => new(sign, Between(random, 95, 219) + (random.NextDouble() < 0.5 ? 0 : Between(random, 1, 9) / 10m), null, "pounds"),
            "pain" => new(sign, odd ? Between(random, 6, 10) : Between(random, 0, 5)),
            _ => throw new ArgumentOutOfRangeException(nameof(sign), sign, "no such vital sign"),
        };
    }

    private static Measured Temperature(Random random, bool odd)
    {
        string ways = Sometimes(random, 0.3, "mouth", "ear", "forehead", "armpit");
        return random.NextDouble() < 0.05
            ? new("temperature", Around(random, 368, 3) / 10m, null, "Celsius", ways)
            : new("temperature", odd ? Between(random, 1001, 1029) / 10m : Around(random, 981, 6) / 10m, null, "Fahrenheit", ways);
    }

    private static Measured Pressure(Random random, bool odd)
    {
        string ways = Sometimes(random, 0.3, "left arm", "right arm");
        decimal upper = odd ? Either(random, 84, 98, 165, 206) : Around(random, 128, 13);
        decimal lower = Math.Min(upper - 25, Around(random, odd && upper > 150 ? 92 : odd ? 56 : 74, 8));
        return new("blood pressure", upper, lower, "", ways);
    }

    private static string Sometimes(Random random, double share, params string[] ways) =>
        random.NextDouble() < share ? ways[random.Next(ways.Length)] : "";

    private static decimal Either(Random random, int low1, int high1, int low2, int high2) =>
        random.Next(2) == 0 ? Between(random, low1, high1) : Between(random, low2, high2);

    private static decimal Between(Random random, int low, int high) => random.Next(low, high + 1);

    // The sum of twelve uniform numbers has a variance of one.
    private static decimal Around(Random random, double mean, double spread) =>
        (decimal)Math.Round(mean + (spread * (Enumerable.Range(0, 12).Sum(_ => random.NextDouble()) - 6)));
}
