namespace HandsFree.Benchmarks.Statistics;

/// <summary>The 95 % interval of the difference of two shares of different recordings, made of both Wilson intervals (Newcombe 1998, Statistics in
/// Medicine 17:873, method 10).</summary>
internal static class DifferenceOfShares
{
    /// <summary>Bounds of the first share less the second, -1 to 1.</summary>
    public static (double Low, double High) Interval(int some1, int all1, int some2, int all2)
    {
        double first = (double)some1 / all1;
        double second = (double)some2 / all2;
        var (low1, high1) = Wilson.Interval(some1, all1);
        var (low2, high2) = Wilson.Interval(some2, all2);
        return (first - second - Root(first - low1, high2 - second), first - second + Root(high1 - first, second - low2));
    }

    private static double Root(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
