namespace HandsFree.Benchmarks.Recordings;

/// <summary>The speakers that the training never hears: every third in order of name, of each pair of folders that are read together
/// (tests/HandsFree.Training/prepare.py does the same).</summary>
internal static class KeptApart
{
    /// <summary>Of all recordings of a pair of folders.</summary>
    public static HashSet<string> Speakers(IEnumerable<Transcript> recordings) =>
        [.. recordings.Select(r => r.Speaker).Distinct().Order(StringComparer.Ordinal).Where((_, i) => i % 3 == 0)];
}
