using System.Collections.Immutable;
using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rounds;

namespace HandsFree.Core.Dialogue;

/// <summary>Who is next, and what is late.</summary>
internal static class RoundOrderTexts
{
    private const int Most = 3;

    public static string Next(Turn turn)
    {
        IReadOnlyList<Resident> order = RoundOrder.Of(turn.Parts.Roster, r => Open(turn, r), r => turn.State.Left.ContainsKey(r.Id));
        string next = order.Count == 0
            ? "Nobody is left in the round."
            : $"Next: {Sentence.List([.. order.Take(Most).Select(r => Place(turn.Parts.Roster, r))])}." + (order.Count > Most ? $" {order.Count - Most} more." : "");
        return Sentence.Join(Late(turn), next);
    }

    /// <summary>The next one alone.</summary>
    public static string NextOne(Turn turn)
    {
        string? here = turn.State.Set?.Resident.Id;
        IReadOnlyList<Resident> order = RoundOrder.Of(turn.Parts.Roster, r => Open(turn, r), r => turn.State.Left.ContainsKey(r.Id));
        return order.FirstOrDefault(r => r.Id != here) is { } next ? $"Next: {Place(turn.Parts.Roster, next)}." : "Nobody is left in the round.";
    }

    private static IReadOnlyList<VitalSign> Open(Turn turn, Resident resident)
    {
        ResidentSet set = turn.State.Set is { } here && here.Resident.Id == resident.Id ? here : turn.SetOf(resident);
        return DueList.Open(DueList.Of(resident, turn.Parts.Settings.Due, turn.State.Journal, turn.At), set.IsSettled);
    }

    // A recheck that could have been done by now.
    private static string Late(Turn turn)
    {
        ImmutableList<string> late =
        [
            .. RecheckChains.Waiting(turn.State.Journal).Where(c => c.Waiting!.DueAt < turn.At)
                .Select(c => turn.Parts.Roster.ById(c.Resident) is { } r ? $"{Place(turn.Parts.Roster, r)}, {SignNames.Of(c.Sign)} to recheck" : "")
                .Where(t => t.Length > 0),
        ];
        return late.IsEmpty ? "" : $"Late: {string.Join("; ", late)}.";
    }

    /// <summary>"room 12 bed B", and why it comes last.</summary>
    public static string Place(Roster roster, Resident resident)
    {
        string place = HandoverTexts.Place(resident);
        return $"{char.ToLowerInvariant(place[0])}{place[1..]}{(resident.Isolation is { } why ? $", {why} isolation" : RoundOrder.IsIsolated(roster, resident) ? ", isolation room" : "")}";
    }
}
