namespace HandsFree.Core.Dialogue;

/// <summary>Day and month of birth, the whole date, or the number on band or photo must match.</summary>
internal static class AwaitingSecondIdentifierState
{
    public static Page Page() => new Page(StateKind.AwaitingSecondIdentifier)
        .WithCommands()
        .WithTries(StateKind.AwaitingRoom)
        .On(Trigger.BirthDate, "compare", Identifying.CheckBirthDate, Matched)
        .On(Trigger.BandNumber, "compare", Identifying.CheckDigits, Matched)
        .On(Trigger.Place, "find the resident, say the name", Always.Place, StateKind.AwaitingName, StateKind.AwaitingRoom)
        .On(Trigger.Repeat, "ask again", Always.Repeat, StateKind.AwaitingSecondIdentifier)
        .On([Trigger.GoBack, Trigger.Cancel, Trigger.NextResident], "room and bed again", AwaitingNameState.Back, StateKind.AwaitingRoom)
        .Ignore(
            Trigger.AboutRound, Trigger.Reading, Trigger.ValueAlone, Trigger.Yes, Trigger.No, Trigger.Correction, Trigger.CountSaid, Trigger.Qualifier,
            Trigger.StartCount, Trigger.Seconds, Trigger.Uneven, Trigger.NotTaken, Trigger.Hedge, Trigger.Pause, Trigger.Continue,
            Trigger.Undo, Trigger.NextOrPrevious, Trigger.Query, Trigger.Worried, Trigger.NotPossible, Trigger.TimerElapsed, Trigger.Played);

    private static StateKind[] Matched =>
    [
        StateKind.Ready, StateKind.AwaitingRecheck, StateKind.AwaitingSecondIdentifier, StateKind.AwaitingRoom, .. Resumption.Suspendable,
    ];
}
