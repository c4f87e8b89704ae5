namespace HandsFree.Benchmarks.Statistics;

/// <summary>Quantiles of a sample.</summary>
internal static class Quantile
{
    /// <summary>Linear between the order statistics (Hyndman and Fan 1996, definition 7). NaN for an empty sample.</summary>
    /// <param name="values">In any order.</param>
    /// <param name="share">0 to 1.</param>
    public static double Of(IEnumerable<double> values, double share)
    {
        double[] sorted = [.. values.Order()];
        if (sorted.Length == 0)
        {
            return double.NaN;
        }

        double place = share * (sorted.Length - 1);
        int below = (int)place;
        return below + 1 < sorted.Length ? sorted[below] + ((place - below) * (sorted[below + 1] - sorted[below])) : sorted[below];
    }
}
