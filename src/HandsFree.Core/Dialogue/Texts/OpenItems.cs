using HandsFree.Core.Handover;

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

        return parts.Count == 0 ? "" : $"{HandoverTexts.Place(set.Resident)}: {string.Join(", ", parts)}.";
    }
}
