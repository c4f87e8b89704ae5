namespace HandsFree.Core.Dialogue;

/// <summary>Paused. A short pause goes on at the same question; after a long one identity is asked again.</summary>
internal static class PausedState
{
    public static Page Page() => new Page(StateKind.Paused)
        .WithCommands()
        .On(Trigger.Continue, "go on at the same question; after a long pause the name again", Continue, [.. Returns])
        .On(Trigger.NextResident, "leave the resident", Always.NextResident, StateKind.AwaitingRoom)
        .On(Trigger.Place, "leave the resident, find the next", Always.Place, StateKind.AwaitingName, StateKind.AwaitingRoom)
        .On(Trigger.NotAReading, "typed: say so; chat: nothing", Always.Unknown, StateKind.Paused)
        .Ignore(
            Trigger.AboutRound, Trigger.Reading, Trigger.ValueAlone, Trigger.Yes, Trigger.No, Trigger.Correction, Trigger.CountSaid, Trigger.Qualifier,
            Trigger.StartCount, Trigger.Seconds, Trigger.Uneven, Trigger.NotTaken, Trigger.Hedge, Trigger.Repeat, Trigger.GoBack,
            Trigger.Cancel, Trigger.Pause, Trigger.Undo, Trigger.NextOrPrevious, Trigger.BirthDate, Trigger.BandNumber, Trigger.Query,
            Trigger.Worried, Trigger.NotPossible, Trigger.NothingHeard, Trigger.PartOfAReading, Trigger.TimerElapsed,
            Trigger.Played);

    private static StateKind[] Returns =>
    [
        StateKind.AwaitingName, StateKind.Ready, StateKind.AwaitingRecheck, StateKind.AwaitingConfirmation, StateKind.AwaitingSayingAgain,
        StateKind.AwaitingValue, StateKind.AwaitingCount, StateKind.AwaitingNotTaken, StateKind.AwaitingAnswer, StateKind.AwaitingUndo,
    ];

    private static Turn Continue(Turn turn)
    {
        var stage = turn.Stage<Stage.Paused>();
        if (turn.At - stage.Since > turn.Parts.Settings.LongestPause)
        {
            var resident = turn.Set.Resident;
            return turn.Leave("paused too long").AskName(resident);
        }

        Stage back = stage.Return with { Asked = 0 };
        return back is Stage.Ready ? turn.Go(back).Say("Ready.") : turn.Ask(back);
    }
}
