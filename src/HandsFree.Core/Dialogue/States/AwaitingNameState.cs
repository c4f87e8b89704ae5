namespace HandsFree.Core.Dialogue;

/// <summary>The name was said in the ear. Yes only after looking at band, photo or asking.</summary>
internal static class AwaitingNameState
{
    public static Page Page() => new Page(StateKind.AwaitingName)
        .WithCommands()
        .WithTries(StateKind.AwaitingRoom)
        .On(Trigger.Yes, "ask for the second identifier, or compare what was said with the place", Agreed, [StateKind.AwaitingSecondIdentifier, StateKind.Ready, StateKind.AwaitingRecheck, StateKind.AwaitingRoom, .. Resumption.Suspendable])
        .On(Trigger.No, "no readings", NotAgreed, StateKind.AwaitingRoom)
        .On(Trigger.Place, "find the resident, say the name", Always.Place, StateKind.AwaitingName, StateKind.AwaitingRoom)
        .On(Trigger.Repeat, "say the name again", Always.Repeat, StateKind.AwaitingName)
        .On([Trigger.GoBack, Trigger.Cancel, Trigger.NextResident], "room and bed again", Back, StateKind.AwaitingRoom)
        .Ignore(
            Trigger.AboutRound, Trigger.Reading, Trigger.ValueAlone, Trigger.Correction, Trigger.CountSaid, Trigger.Qualifier, Trigger.StartCount,
            Trigger.Seconds, Trigger.Uneven, Trigger.NotTaken, Trigger.Hedge, Trigger.Pause, Trigger.Continue, Trigger.Undo,
            Trigger.NextOrPrevious, Trigger.BirthDate, Trigger.BandNumber, Trigger.Query, Trigger.Worried, Trigger.NotPossible,
            Trigger.TimerElapsed, Trigger.Played);

    public static Turn Back(Turn turn) => turn.Leave("left for the next resident").Ask(new Stage.AwaitingRoom());

    private static Turn Agreed(Turn turn)
    {
        var stage = turn.Stage<Stage.AwaitingName>();
        if (turn.State.Suspended is { Set: null, Stage: Stage.AwaitingSecondIdentifier asked })
        {
            return (turn with { State = turn.State with { Suspended = null } }).Ask(asked);
        }

        var second = new Stage.AwaitingSecondIdentifier(stage.Resident);
        return stage.Born is { } born ? turn.Go(second).CheckBirthDate(born) : turn.Ask(second);
    }

    private static Turn NotAgreed(Turn turn) =>
        turn.IdentityFailed(turn.Stage<Stage.AwaitingName>().Resident, "name not agreed", "");
}
