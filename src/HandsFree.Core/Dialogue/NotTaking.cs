using System.Collections.Immutable;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Rounds;

namespace HandsFree.Core.Dialogue;

/// <summary>Not taken is an outcome too, with its reason.</summary>
internal static class NotTaking
{
    /// <summary>Reads "not taken" back.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="said">What was said.</param>
    /// <param name="awaited">The vital sign in hand; null for all that is open.</param>
    public static Turn OfferNotTaken(this Turn turn, Meaning.NotTaken said, VitalSign? awaited)
    {
        VitalSign? sign = said.Sign ?? awaited;
        string text = NotTakenTexts.ReadBack(sign, said.Reason);
        return turn.Ask(new Stage.AwaitingNotTaken(sign, said.Reason, turn.Heard, text));
    }

    public static Recorded RecordNotTaken(this Turn turn, Stage.AwaitingNotTaken what, Sleeping sleeping)
    {
        ResidentSet before = turn.Set;
        ImmutableList<VitalSign> signs = what.Sign is { } one ? [one] : [.. turn.StillDue()];
        int firstEvent = turn.ToWrite.Count;
        turn = turn.Write(id => new NotTakenRecorded(
            id, turn.State.Aide, turn.At, before.Resident.Id, what.Sign, what.Reason, what.Heard, what.ReadBack));
        turn = turn.With(turn.Set.WithNotTaken(what, signs));
        Recorded follows = turn.Follow(what, signs, sleeping);
        var item = new SavedItem([.. follows.Turn.ToWrite.Skip(firstEvent).Select(e => e.Id)], what.Sign, null, what.ReadBack, before);
        ResidentSet set = follows.Turn.Set;
        return follows with { Turn = follows.Turn.With(set with { Saved = set.Saved.Add(item) }) };
    }

    private static Recorded Follow(this Turn turn, Stage.AwaitingNotTaken what, ImmutableList<VitalSign> signs, Sleeping sleeping) => sleeping switch
    {
        Sleeping.DidNotWake => turn.OpenReport(ReportUrgency.Now, "asleep, did not wake to the voice", "asleep-did-not-wake"),
        Sleeping.NotKnown => turn.OpenReport(ReportUrgency.ThisShift, "asleep, not known whether woke to the voice", "asleep-did-not-wake"),
        _ when what.Reason == NotTakenReason.CouldNotObtain && signs.Any(s => turn.Set.CouldNotObtain.GetValueOrDefault(s) == 2) =>
            turn.OpenReport(ReportUrgency.Now, $"{what.ReadBack}, twice", "could-not-obtain-twice"),
        _ => new Recorded(turn, ""),
    };

    private static ResidentSet WithNotTaken(this ResidentSet set, Stage.AwaitingNotTaken what, ImmutableList<VitalSign> signs)
    {
        ImmutableDictionary<VitalSign, int> failed = what.Reason == NotTakenReason.CouldNotObtain
            ? signs.Aggregate(set.CouldNotObtain, (counts, sign) => counts.SetItem(sign, counts.GetValueOrDefault(sign) + 1))
            : set.CouldNotObtain;
        return set with { NotTaken = set.NotTaken.SetItems(signs.Select(s => KeyValuePair.Create(s, what.Reason))), AskAgain = set.AskAgain.Except(signs), Open = set.Open.RemoveAll(signs.Contains), CouldNotObtain = failed };
    }
}
