using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;

namespace HandsFree.Core.Dialogue;

/// <summary>Locked (safety 5). Nothing of a resident is said or shown, and nothing can be recorded; the round is kept. After it identity is
/// asked again.</summary>
internal static class LockedState
{
    public static Page Page() => new Page(StateKind.Locked)
        .WithJournal()
        .On(Trigger.NurseNeeded, "say that it can't call", Always.NurseNeeded, StateKind.Locked)
        .On(Trigger.Unwell, "call light", Unwelling.Hear, StateKind.Locked)
        .On([Trigger.Help, Trigger.Repeat, Trigger.Continue], "say what unlocks", Always.Repeat, StateKind.Locked)
        .On(Trigger.BandNumber, "ask whether the digits unlock", Try, StateKind.Locked)
        .On(Trigger.Unlocked, "room and bed again", Unlocked, StateKind.AwaitingRoom)
        .On(Trigger.UnlockRefused, "say so, and how long to wait", Refused, StateKind.Locked)
        .Ignore([.. Enum.GetValues<Trigger>().Except(
        [
            Trigger.Saved, Trigger.SaveFailed, Trigger.NurseNeeded, Trigger.Unwell, Trigger.Help, Trigger.Repeat, Trigger.Continue, Trigger.BandNumber,
            Trigger.Unlocked, Trigger.UnlockRefused, Trigger.Resumed,
        ])]);

    /// <summary>Every other state can be locked, but for what is over in a moment or waits for the record.</summary>
    public static Page WithLock(this Page page)
    {
        bool locks = page.State is not (StateKind.Saving or StateKind.NotSaved or StateKind.Ended or StateKind.Locked);
        Page decided = locks ? page.On(Trigger.LockDue, "leave the resident, lock", Lock, StateKind.Locked) : page;
        Trigger[] others = [Trigger.LockDue, Trigger.Unlocked, Trigger.UnlockRefused, Trigger.BedAlone, Trigger.WrongResident];
        return decided.Ignore([.. others.Where(trigger => !decided.Rows.ContainsKey(trigger))]);
    }

    private static Turn Lock(Turn turn)
    {
        Turn left = turn.Depart("locked");
        return left.Write(id => new SessionLocked(id, turn.State.Aide, turn.At))
            .Ask(new Stage.Locked(turn.Parts.Settings.UnlocksBySpokenDigits));
    }

    private static Turn Try(Turn turn) =>
        turn.Stage<Stage.Locked>().Spoken ? turn.Do(new Effect.Unlock(turn.Meant<Meaning.BandNumber>().Number)) : turn;

    private static Turn Unlocked(Turn turn)
    {
        var unlocked = (DialogueEvent.Unlocked)turn.Event;
        return turn.Write(id => new SessionUnlocked(id, turn.State.Aide, turn.At, unlocked.By))
            .Ask("The round goes on.", new Stage.AwaitingRoom());
    }

    private static Turn Refused(Turn turn)
    {
        TimeSpan wait = ((DialogueEvent.UnlockRefused)turn.Event).Wait;
        return turn.Write(id => new UnlockFailed(id, turn.State.Aide, turn.At, wait))
            .Go(turn.Stage<Stage.Locked>() with { Refused = wait <= TimeSpan.Zero ? "that was wrong, type your PIN" : $"that was wrong, wait {Words(wait)}" })
            .Say(wait <= TimeSpan.Zero ? "That does not unlock." : $"That does not unlock. Wait {Words(wait)}.");
    }

    private static string Words(TimeSpan wait) => wait <= TimeSpan.FromMinutes(1) ? "a minute" : "some minutes, or ask your supervisor";
}
