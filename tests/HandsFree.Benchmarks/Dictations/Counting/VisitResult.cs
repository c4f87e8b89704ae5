namespace HandsFree.Benchmarks.Dictations.Counting;

/// <summary>What came of one visit.</summary>
/// <param name="Rows">Its dictations.</param>
/// <param name="Findings">What should not have happened.</param>
/// <param name="IdentitySeconds">From the door to the first reading.</param>
internal sealed record VisitResult(IReadOnlyList<DictationRow> Rows, IReadOnlyList<Finding> Findings, double IdentitySeconds);
