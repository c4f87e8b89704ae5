using HandsFree.App.Demo.Script;
using HandsFree.Core.Journal;

namespace HandsFree.App.Demo.Outcome;

/// <summary>Whether the journal holds exactly what is expected.</summary>
/// <param name="Missing">What is expected and not there.</param>
/// <param name="Unexpected">What is there and not expected.</param>
internal sealed record JournalComparison(IReadOnlyList<string> Missing, IReadOnlyList<string> Unexpected)
{
    /// <summary>Whether nothing is missing and nothing too much.</summary>
    public bool IsExact => Missing.Count == 0 && Unexpected.Count == 0;

    /// <summary>Compares; the order does not count, how often does. What was left open and taken later is open no more.</summary>
    public static JournalComparison Of(IReadOnlyList<JournalEvent> journal, IEnumerable<ExpectedEntry> expected)
    {
        List<string> found = [.. journal.Where((entry, at) => entry is not LeftOpen open || !IsTaken(open, journal.Skip(at)))
            .Select(EntryLine.Of).OfType<string>()];
        List<string> missing = [.. expected.Select(EntryLine.Of).Where(line => !found.Remove(line))];
        return new JournalComparison(missing, found);
    }

    private static bool IsTaken(LeftOpen open, IEnumerable<JournalEvent> later) =>
        later.OfType<ReadingRecorded>().Any(r => r.Resident == open.Resident && r.Confirmed.Reading.Value.Sign == open.Sign);
}
