using HandsFree.Core.Handover;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rounds;

namespace HandsFree.Core.Dialogue;

/// <summary>Names what is open, in one sentence for each resident: before a resident or the round is left, and when the next round begins.</summary>
internal static class OpenItems
{
    private const int Most = 3;

    /// <summary>Of everybody who was begun in this round; where it is more than one, the places alone, for each was named when she was left,
    /// and what the nurse must be told.</summary>
    public static string Of(Turn turn)
    {
        List<ResidentSet> open = [.. turn.State.Left.Values.OrderBy(s => s.Resident.Room).ThenBy(s => s.Resident.Bed, StringComparer.Ordinal).Where(s => Of(turn, s).Length > 0)];
        if (open.Count < 2)
        {
            return open.Count == 0 ? "" : Of(turn, open[0]);
        }

        List<Report> untold = [.. Untold(turn).Where(r => open.Any(s => s.Resident.Id == r.Resident))];
        IEnumerable<string> tell = open.Select(s => (s.Resident, Reports: untold.FindAll(r => r.Resident == s.Resident.Id))).Where(t => t.Reports.Count > 0)
            .Select(t => $"{Sentence.Small(HandoverTexts.Place(t.Resident))}, {What(t.Reports)}");
        return Sentence.Join(
            $"Open: {Sentence.List([.. open.Select(s => Sentence.Small(HandoverTexts.Place(s.Resident)))])}.",
            untold.Count == 0 ? "" : $"{Reporting.Tell(untold.Max(r => r.Urgency)).TrimEnd('.')}: {string.Join("; ", tell)}.");
    }

    /// <summary>Of one resident; empty where nothing is open.</summary>
    public static string Of(Turn turn, ResidentSet set)
    {
        List<string> parts = [];
        IReadOnlyList<VitalSign> due = DueList.Open(DueList.Of(set.Resident, turn.Parts.Settings.Due, turn.State.Journal, turn.At), set.IsSettled);
        if (due.Count > Most)
        {
            parts.Add($"{DigitWords.Of(due.Count)} not taken yet");
        }
        else
        {
            Add(due, "not taken yet");
        }

        Add(set.Open, "left open");
        Add([.. set.Waiting.Select(w => w.Sign)], "to recheck");
        parts.AddRange(set.NotTaken.OrderBy(n => n.Key).Select(n => $"{SignNames.Of(n.Key)} {NotTakenTexts.Reason(n.Value)}"));
        List<Report> untold = [.. Untold(turn).Where(r => r.Resident == set.Resident.Id)];
        string tell = untold.Count == 0 ? "" : $"{Reporting.Tell(untold.Max(r => r.Urgency)).TrimEnd('.')}: {What(untold)}.";
        return parts.Count == 0 && tell.Length == 0 ? ""
            : parts.Count == 0 ? $"{HandoverTexts.Place(set.Resident)}: {char.ToLowerInvariant(tell[0])}{tell[1..]}"
            : Sentence.Join($"{HandoverTexts.Place(set.Resident)}: {string.Join(", ", parts)}.", tell);

        void Add(IReadOnlyList<VitalSign> signs, string what)
        {
            if (signs.Count > 0)
            {
                parts.Add($"{Sentence.List([.. signs.Select(SignNames.Of)])} {what}");
            }
        }
    }

    /// <summary>What earlier rounds left: the nurse was not told. Empty where nothing is.</summary>
    public static string Before(Turn turn)
    {
        List<string> open =
            [.. Untold(turn).GroupBy(r => r.Resident).Select(g => Named(turn, g.Key, $"tell the nurse: {What([.. g])}"))];
        open.RemoveAll(t => t.Length == 0);
        return open.Count == 0 ? "" : $"Open from before: {string.Join("; ", open.Take(Most))}{(open.Count > Most ? $"; and {open.Count - Most} more" : "")}.";
    }

    private static string Named(Turn turn, string resident, string what) =>
        turn.Parts.Roster.ById(resident) is { } one ? $"{Sentence.Small(HandoverTexts.Place(one))}, {what}" : "";

    // All that the dialogue has written, flushed or not yet.
    private static IEnumerable<Report> Untold(Turn turn) => ReportBook
        .Of(turn.Known())
        .All.Where(r => r.State == ReportState.Open);

    private static string What(IReadOnlyList<Report> reports) => Sentence.List(
        [.. reports.Select(r => r.Sign is { } sign ? SignNames.Of(sign) : r.Situation).Distinct()]);
}
