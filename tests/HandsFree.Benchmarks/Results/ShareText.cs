using HandsFree.Benchmarks.Statistics;

namespace HandsFree.Benchmarks.Results;

/// <summary>A share as the tables write it.</summary>
internal static class ShareText
{
    /// <summary>"3 (0.4 to 2.1 %)": the count and its Wilson interval.</summary>
    public static string Of(int some, int all)
    {
        if (all == 0)
        {
            return "-";
        }

        var (low, high) = Wilson.Interval(some, all);
        return FormattableString.Invariant($"{some} ({100 * low:0.0} to {100 * high:0.0} %)");
    }
}
