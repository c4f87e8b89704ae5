using HandsFree.Core.Handover;
using HandsFree.Core.Reports;

namespace HandsFree.Core.Dialogue;

/// <summary>Names what was left open, before the round or the resident is left.</summary>
internal static class OpenItems
{
    public static string Of(DialogueState state) =>
        string.Join(' ', state.Left.Values.OrderBy(s => s.Resident.Room).ThenBy(s => s.Resident.Bed, StringComparer.Ordinal)
            .Select(Of).Where(t => t.Length > 0));

    public static string Of(ResidentSet set)
    {
        List<string> parts = [];
        if (set.Open.Count > 0)
        {
            parts.Add($"{Sentence.List([.. set.Open.Select(SignNames.Of)])} left open");
        }

        if (set.Waiting.Count > 0)
        {
            parts.Add($"{Sentence.List([.. set.Waiting.Select(w => SignNames.Of(w.Sign))])} to recheck");
        }

        parts.AddRange(set.NotTaken.OrderBy(n => n.Key).Select(n => $"{SignNames.Of(n.Key)} {NotTakenTexts.Reason(n.Value)}"));
        return parts.Count == 0 ? "" : Sentence.Join($"{HandoverTexts.Place(set.Resident)}: {string.Join(", ", parts)}.", Tell(set));
    }

    // A recheck that was not done has become a report.
    private static string Tell(ResidentSet set)
    {
        List<ReportUrgency> told = [.. set.Waiting.Where(w => set.Reported.ContainsKey(w.Sign)).Select(w => set.Reported[w.Sign])];
        return told.Count == 0 ? "" : Reporting.Tell(told.Max());
    }
}
