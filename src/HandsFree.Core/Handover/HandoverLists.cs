using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;

namespace HandsFree.Core.Handover;

/// <summary>The lists that can be asked for.</summary>
internal static class HandoverLists
{
    /// <summary>Above this a temperature is a fever: 100 F at any site (the default for single readings, IDSA 2008 as cited in
    /// clinical-rules 3.1, with the home's change for the site).</summary>
    private const decimal FeverAboveFahrenheit = 100m;

    public static IReadOnlyList<HandoverEntry> Entries(HandoverView view, HandoverCursor cursor) =>
        [.. view.Entries.Where(e => IsOn(e, cursor))];

    public static IReadOnlyList<HandoverItem> Items(HandoverView view, HandoverCursor cursor) =>
        [.. Entries(view, cursor).Select(e => new HandoverItem(e.Resident.Room, e.Resident.Bed, e.Rank, Text(e, cursor.Asked)))];

    public static string Summary(HandoverView view, HandoverCursor cursor, IReadOnlyList<HandoverItem> items) => cursor.Asked switch
    {
        QueryKind.Handover => Whole(view),
        QueryKind.Room => items.Count == 0 ? $"Nobody is on the list in room {cursor.Room}." : "",
        QueryKind.OpenReports => Count(view.Entries.Sum(e => e.Reports.Count), "open report", "No open reports."),
        QueryKind.WhoNeedsARecheck => Count(items.Count, "recheck", "Nobody needs a recheck."),
        QueryKind.WhoWasNotTaken => Count(items.Count, "resident", "Everybody was taken."),
        QueryKind.WhoRefused => Count(items.Count, "resident", "Nobody refused."),
        QueryKind.WhoHasAFever => Count(items.Count, "resident", "Nobody has a fever."),
        _ => throw new ArgumentOutOfRangeException(nameof(cursor), cursor.Asked, "not a list"),
    };

    private static bool IsOn(HandoverEntry entry, HandoverCursor cursor) => cursor.Asked switch
    {
        QueryKind.Handover => true,
        QueryKind.Room => entry.Resident.Room == cursor.Room,
        QueryKind.OpenReports => entry.Reports.Count > 0,
        QueryKind.WhoNeedsARecheck => entry.Rechecks.Count > 0,
        QueryKind.WhoWasNotTaken => entry.NotTaken.Count + entry.LeftOpen.Count > 0 || entry.Rank == HandoverRank.NothingYet,
        QueryKind.WhoRefused => entry.NotTaken.Any(n => n.Reason is NotTakenReason.Refused or NotTakenReason.Declined),
        QueryKind.WhoHasAFever => HasFever(entry),
        _ => throw new ArgumentOutOfRangeException(nameof(cursor), cursor.Asked, "not a list"),
    };

    private static bool HasFever(HandoverEntry entry) =>
        entry.Last.TryGetValue(VitalSign.Temperature, out var last)
        && last.Confirmed.Reading.Value is BodyTemperature { Fahrenheit: > FeverAboveFahrenheit };

    private static string Text(HandoverEntry entry, QueryKind asked) => asked switch
    {
        QueryKind.Room => HandoverTexts.Room(entry),
        QueryKind.OpenReports => HandoverTexts.Reports(entry),
        QueryKind.WhoNeedsARecheck => HandoverTexts.Rechecks(entry),
        QueryKind.WhoWasNotTaken or QueryKind.WhoRefused => HandoverTexts.Missing(entry),
        QueryKind.WhoHasAFever =>
            $"{HandoverTexts.Place(entry.Resident)}: {HandoverTexts.LastValue(entry.Last[VitalSign.Temperature], entry.Resident)}.",
        _ => HandoverTexts.Line(entry),
    };

    private static string Whole(HandoverView view)
    {
        int now = view.Entries.Sum(e => e.Reports.Count(r => r.Urgency == ReportUrgency.Now));
        int shift = view.Entries.Sum(e => e.Reports.Count(r => r.Urgency == ReportUrgency.ThisShift));
        string[] parts =
        [
            Part(now, "report now", "reports now"),
            Part(shift, "report this shift", "reports this shift"),
            Part(view.Entries.Count(e => e.Rechecks.Count > 0), "recheck", "rechecks"),
            Part(view.Entries.Count(e => e.NotTaken.Count > 0), "with something not taken", "with something not taken"),
            Part(view.Entries.Count(e => e.LeftOpen.Count > 0), "with a value left open", "with a value left open"),
            Part(view.Entries.Count(e => e.Rank == HandoverRank.NothingYet), "not visited", "not visited"),
        ];
        string[] said = [.. parts.Where(p => p.Length > 0)];
        return $"{Part(view.Entries.Count, "resident", "residents")}. {(said.Length == 0 ? "All in order." : Capital(string.Join(", ", said)) + ".")}";
    }

    private static string Part(int count, string one, string many) => count switch
    {
        0 => "",
        1 => $"1 {one}",
        _ => $"{count} {many}",
    };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Count(int count, string what, string none) => count switch
    {
        0 => none,
        1 => $"1 {what}.",
        _ => $"{count} {what}s.",
    };
}
