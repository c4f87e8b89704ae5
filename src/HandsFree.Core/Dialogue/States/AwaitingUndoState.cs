namespace HandsFree.Core.Dialogue;

/// <summary>The last saved item was named; yes marks it as entered in error.</summary>
internal static class AwaitingUndoState
{
    public static Page Page() => new Page(StateKind.AwaitingUndo)
        .WithCommands()
        .WithTries(StateKind.Ready, StateKind.AwaitingRecheck)
        .WithYesNoAlone()
        .WithLeaving()
        .On(Trigger.Yes, "mark as entered in error", Undoing.Undo, StateKind.Saving)
        .On([Trigger.No, Trigger.Cancel, Trigger.GoBack], "keep it", Keep, StateKind.Ready, StateKind.AwaitingRecheck);

    private static Turn Keep(Turn turn) => turn.Go(turn.Set.Base()).Say("It stays.");
}
