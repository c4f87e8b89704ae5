using HandsFree.Benchmarks.Statistics;

namespace HandsFree.Benchmarks.Dictations.Counting;

/// <summary>Some of all, with its 95 % interval (Wilson).</summary>
internal sealed record Share(int Some, int Of, double Low, double High)
{
    /// <summary>Counts.</summary>
    public static Share In<T>(IReadOnlyCollection<T> all, Func<T, bool> counts)
    {
        int some = all.Count(counts);
        var (low, high) = Wilson.Interval(some, all.Count);
        return new Share(some, all.Count, low, high);
    }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant(
        $"{Some,6} of {Of,6}  {(Of == 0 ? 0 : 100.0 * Some / Of),6:0.00} %  (95 %: {100 * Low:0.00} to {100 * High:0.00} %)");
}
