using HandsFree.App.Demo.Outcome;

namespace HandsFree.Benchmarks.Live;

/// <summary>How a live shift ended.</summary>
/// <param name="ExitCode">Of the round; null where it did not end.</param>
/// <param name="Journal">What the journal lacks and has too much.</param>
internal sealed record LiveShiftResult(int? ExitCode, JournalComparison Journal)
{
    /// <summary>How long the answers took, where it was recorded.</summary>
    public IReadOnlyList<AnswerTime> Answers { get; init; } = [];

    /// <summary>Whether all is exactly as it should be.</summary>
    public bool IsExact => ExitCode == 0 && Journal.IsExact;
}
