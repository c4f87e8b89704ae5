namespace HandsFree.Core.Dialogue;

/// <summary>Rows of the states that wait for yes or no and can use nothing else.</summary>
internal static class YesNo
{
    private static readonly Trigger[] Others =
    [
        Trigger.Reading, Trigger.ValueAlone, Trigger.Correction, Trigger.CountSaid, Trigger.Qualifier, Trigger.StartCount, Trigger.Seconds,
        Trigger.Uneven, Trigger.NotTaken, Trigger.Hedge, Trigger.Undo, Trigger.Worried, Trigger.NotPossible,
    ];

    public static Page WithYesNoAlone(this Page page) => page
        .On(Trigger.Repeat, "ask again", Always.Repeat, page.State)
        .On(Others, "this one first", Always.AnswerFirst, page.State)
        .Ignore(
            Trigger.AboutRound, Trigger.Continue, Trigger.NextOrPrevious, Trigger.BirthDate, Trigger.BandNumber, Trigger.Query, Trigger.TimerElapsed,
            Trigger.Played);

    public static Page WithLeaving(this Page page) => page
        .On(Trigger.NextResident, "leave the resident", Always.NextResident, StateKind.AwaitingRoom)
        .On(Trigger.Place, "leave the resident, find the next", Always.Place, StateKind.AwaitingName, StateKind.AwaitingRoom)
        .On(Trigger.Pause, "wait", Always.Pause, StateKind.Paused);
}
