using HandsFree.Core.Journal;
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
        [.. Entries(view, cursor).Select(e => Item(e, Text(e, cursor, view.Time)))];

    public static HandoverItem Item(HandoverEntry entry, string text) =>
        new(entry.Resident.Room, entry.Resident.Bed, entry.Rank, text) { Resident = entry.Resident.Id, IsOverdue = entry.IsOverdue };

    public static string Summary(HandoverView view, HandoverCursor cursor, IReadOnlyList<HandoverItem> items) => cursor.Asked switch
    {
        QueryKind.Handover => Whole(view),
        QueryKind.Room or QueryKind.LastValue => items.Count == 0 ? Nobody(view, cursor) : "",
        QueryKind.OpenReports => OpenReports(view),
        QueryKind.WhoNeedsARecheck => Count(items.Count, "recheck", "Nobody needs a recheck."),
        QueryKind.WhoWasNotTaken => Count(items.Count, "resident", "Everybody was taken."),
        QueryKind.WhoRefused => Count(items.Count, "resident", "Nobody refused."),
        QueryKind.WhoHasAFever => Count(items.Count, "resident", "Nobody has a fever."),
        QueryKind.WhoIsNewOrChanged => Count(items.Count, "resident", "Nobody is new or changed."),
        QueryKind.HowManyAreLeft => Left(view),
        _ => throw new ArgumentOutOfRangeException(nameof(cursor), cursor.Asked, "not a list"),
    };

    private static bool IsOn(HandoverEntry entry, HandoverCursor cursor) => cursor.Asked switch
    {
        QueryKind.Handover => true,
        QueryKind.Room or QueryKind.LastValue => entry.Resident.Room == cursor.Room && (cursor.Bed is null || entry.Resident.Bed == cursor.Bed),
        QueryKind.OpenReports => entry.Reports.Count > 0,
        QueryKind.WhoNeedsARecheck => entry.Rechecks.Count > 0,
        QueryKind.WhoWasNotTaken => entry.NotTaken.Count + entry.LeftOpen.Count + entry.StillDue.Count > 0,
        QueryKind.WhoRefused => entry.NotTaken.Any(n => n.Reason is NotTakenReason.Refused or NotTakenReason.Declined),
        QueryKind.WhoHasAFever => HasFever(entry),
        QueryKind.WhoIsNewOrChanged => entry.IsNew || entry.IsChanged,
        QueryKind.HowManyAreLeft => IsLeft(entry),
        _ => throw new ArgumentOutOfRangeException(nameof(cursor), cursor.Asked, "not a list"),
    };

    private static bool IsLeft(HandoverEntry entry) => entry.Rechecks.Count + entry.LeftOpen.Count + entry.StillDue.Count > 0;

    private static bool HasFever(HandoverEntry entry) => Fever(entry) is not null || FeverReports(entry).Any();

    private static ReadingRecorded? Fever(HandoverEntry entry) => entry.Last.TryGetValue(VitalSign.Temperature, out ReadingRecorded? last) && IsFever(last) ? last : null;

    /// <summary>Open reports of a fever, also from before the list begins and where it was lower since: they wait for a nurse.</summary>
    private static IEnumerable<Report> FeverReports(HandoverEntry entry) => entry.Reports.Where(r => entry.Readings.Any(reading => r.Readings.Contains(reading.Id) && IsFever(reading)));

    private static bool IsFever(ReadingRecorded reading) => reading.Confirmed.Reading.Value is BodyTemperature { Fahrenheit: > FeverAboveFahrenheit };

    private static string Text(HandoverEntry entry, HandoverCursor cursor, HandoverTime time) => cursor switch
    {
        { Asked: QueryKind.LastValue, Sign: { } sign } => HandoverTexts.LastValue(entry, sign, time),
        { Asked: QueryKind.Room or QueryKind.LastValue } => HandoverTexts.Room(entry),
        { Asked: QueryKind.OpenReports } => HandoverTexts.Reports(entry),
        { Asked: QueryKind.WhoNeedsARecheck } => HandoverTexts.Rechecks(entry),
        { Asked: QueryKind.WhoWasNotTaken or QueryKind.WhoRefused } => HandoverTexts.Missing(entry),
        { Asked: QueryKind.HowManyAreLeft } => HandoverTexts.Left(entry),
        { Asked: QueryKind.WhoHasAFever } =>
            Fever(entry) is { } fever ? $"{HandoverTexts.Place(entry.Resident)}: {HandoverTexts.LastValue(fever, entry.Resident)}." : HandoverTexts.Reports(entry, FeverReports(entry)),
        { Asked: QueryKind.WhoIsNewOrChanged } => HandoverTexts.NewOrChanged(entry),
        _ => HandoverTexts.Line(entry),
    };

    private static string Nobody(HandoverView view, HandoverCursor cursor) =>
        cursor.Bed is { } bed && view.Entries.Any(e => e.Resident.Room == cursor.Room)
            ? $"Room {cursor.Room} has no bed {bed.ToUpperInvariant()}."
            : $"Room {cursor.Room} is not in this home.";

    private static string OpenReports(HandoverView view)
    {
        IReadOnlyList<Report> open = [.. view.Entries.SelectMany(e => e.Reports)];
        int overdue = view.Time.Now is { } now ? open.Count(r => r.IsOverdue(view.Time.Overdue, now)) : 0;
        return overdue == 0
            ? Count(open.Count, "open report", "No open reports.")
            : $"{Part(open.Count, "open report", "open reports")}, {overdue} overdue.";
    }

    private static string Left(HandoverView view)
    {
        IReadOnlyList<HandoverEntry> left = [.. view.Entries.Where(IsLeft)];
        string[] parts =
        [
            Part(left.Count(e => e.NotVisited), "not visited", "not visited"),
            Part(left.Count(e => e.IsBegun), "begun", "begun"),
            Part(left.Count(e => e.Rechecks.Count > 0), "recheck", "rechecks"),
            Part(left.Count(e => e.LeftOpen.Count > 0), "with a value left open", "with a value left open"),
        ];
        string[] said = [.. parts.Where(p => p.Length > 0)];
        return said.Length == 0 ? "Nobody is left." : $"{Part(left.Count, "resident is", "residents are")} left: {string.Join(", ", said)}.";
    }

    private static string Whole(HandoverView view)
    {
        int now = view.Entries.Sum(e => e.Reports.Count(r => r.Urgency == ReportUrgency.Now));
        int shift = view.Entries.Sum(e => e.Reports.Count(r => r.Urgency == ReportUrgency.ThisShift));
        string[] parts =
        [
            Part(now, "report now", "reports now"),
            Part(shift, "report this shift", "reports this shift"),
            Part(view.Entries.Count(e => e.Rechecks.Count > 0), "recheck", "rechecks"),
            Part(view.Entries.Count(e => e.Acknowledged.Count > 0), "with a report acknowledged", "with a report acknowledged"),
            Part(view.Entries.Count(e => e.NotTaken.Count > 0), "with something not taken", "with something not taken"),
            Part(view.Entries.Count(e => e.LeftOpen.Count > 0), "with a value left open", "with a value left open"),
            Part(view.Entries.Count(e => e.IsBegun), "not complete", "not complete"),
            Part(view.Entries.Count(e => e.NotVisited), "not visited", "not visited"),
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
