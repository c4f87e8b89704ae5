using HandsFree.Core.Journal;

namespace HandsFree.Core.Dialogue;

/// <summary>Undo: the last thing saved for this resident, with the recheck or report that came of it, is marked as entered in error.
/// Nothing leaves the journal.</summary>
internal static class Undoing
{
    public static Turn Ask(Turn turn) => turn.Set.Saved.Count == 0
        ? turn.Say("Nothing is saved for this resident.")
        : turn.Ask(new Stage.AwaitingUndo(turn.Set.Saved[^1]));

    public static Turn Undo(Turn turn)
    {
        SavedItem item = turn.Stage<Stage.AwaitingUndo>().Item;
        ResidentSet set = turn.Set;
        Turn marked = item.Events.Aggregate(turn, (t, gone) =>
            t.Write(id => new EnteredInError(id, t.State.Aide, t.At, set.Resident.Id, gone, "undo")));
        ResidentSet before = item.Before with { Refused = set.Refused, DangerSaid = set.DangerSaid, Guessed = set.Guessed, GuessedUnnamed = set.GuessedUnnamed, Held = set.Held, RestingSince = set.RestingSince };
        return marked.With(before).Save("Removed.", before.Base());
    }
}
