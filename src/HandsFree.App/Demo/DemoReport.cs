using HandsFree.App.Demo.Outcome;
using HandsFree.App.Session;
using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;

namespace HandsFree.App.Demo;

/// <summary>The end of a demo: the handover list, what was saved, and whether it is what it should be.</summary>
internal static class DemoReport
{
    /// <summary>Writes it.</summary>
    /// <param name="write">Takes a line.</param>
    /// <param name="parts">What the demo was started with.</param>
    /// <param name="end">How the session ended.</param>
    /// <param name="journal">All that the journal holds.</param>
    /// <param name="kept">Whether the home stays.</param>
    /// <returns>Whether all is as it should be.</returns>
    public static bool Write(
        Action<string> write, DemoParts parts, SessionEnd end, IReadOnlyList<JournalEvent> journal, bool kept)
    {
        write("");
        write("Handover, the exceptions first:");
        HandoverView view = HandoverView.From(journal, parts.Home.Roster, parts.Home.Settings.Round);
        foreach (HandoverItem item in HandoverAnswerer.Answer(view, new Meaning.Query(QueryKind.Handover, null), HandoverCursor.Start).Items)
        {
            write("  " + item.Text);
        }

        write("");
        JournalComparison comparison = JournalComparison.Of(journal, parts.Manifest.Expected);
        bool asExpected = comparison.IsExact && parts.Clips.Changed.Count == 0 && end == SessionEnd.Goodbye;
        foreach (string line in Differences(parts, comparison, end))
        {
            write(line);
        }

        write(
            $"Saved: {Count<ReadingRecorded>(journal, "reading", "readings")}, {Count<NotTakenRecorded>(journal, "not taken", "not taken")}, "
            + $"{Count<ReportOpened>(journal, "report", "reports")}; {(asExpected ? "exactly what was said, and nothing else." : "not what it should be, see above.")}");
        if (kept)
        {
            write($"The made-up home is in {parts.Home.Folder.Path}; try other commands on it with --home.");
        }

        return asExpected;
    }

    private static string Count<T>(IReadOnlyList<JournalEvent> journal, string one, string several)
        where T : JournalEvent
    {
        int count = journal.OfType<T>().Count();
        return $"{count} {(count == 1 ? one : several)}";
    }

    private static IEnumerable<string> Differences(DemoParts parts, JournalComparison comparison, SessionEnd end) =>
        parts.Clips.Changed.Select(line => "Changed: " + line)
            .Concat(comparison.Missing.Select(line => "Missing in the journal: " + line))
            .Concat(comparison.Unexpected.Select(line => "In the journal, but not expected: " + line))
            .Concat(end == SessionEnd.Goodbye ? [] : ["The shift did not come to its end: the aide gave up."]);
}
