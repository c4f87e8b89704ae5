namespace HandsFree.Benchmarks.Statistics;

/// <summary>The 95 % interval of a share (Wilson 1927, score interval; z = 1.959964).</summary>
internal static class Wilson
{
    private const double Z = 1.959964;

    /// <summary>Lower and upper bound for some of all, 0 to 1.</summary>
    public static (double Low, double High) Interval(int some, int all)
    {
        if (all == 0)
        {
            return (0, 1);
        }

        double share = (double)some / all;
        double denominator = 1 + (Z * Z / all);
        double centre = share + (Z * Z / (2 * all));
        double spread = Z * Math.Sqrt((share * (1 - share) / all) + (Z * Z / (4.0 * all * all)));
        return (Math.Max(0, (centre - spread) / denominator), Math.Min(1, (centre + spread) / denominator));
    }
}
