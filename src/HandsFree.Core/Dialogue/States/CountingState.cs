using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>A count runs between two tones. Nothing is said while breaths are counted.</summary>
internal static class CountingState
{
    public static Page Page() => new Page(StateKind.Counting)
        .WithCommands()
        .On(Trigger.Played, "the tone, and the clock from it", Begun, StateKind.Counting)
        .On(Trigger.TimerElapsed, "the second tone", Over, StateKind.AwaitingCount, StateKind.Counting)
        .On(Trigger.Uneven, "sixty seconds from the beginning", Uneven, StateKind.Counting)
        .On([Trigger.StartCount, Trigger.Seconds], "begin anew", CountStart.Begin, StateKind.Counting)
        .On([Trigger.Reading, Trigger.ValueAlone, Trigger.CountSaid], "a number before the time is over is a guess", Early, StateKind.Counting)
        .On(Trigger.NotTaken, "read back not taken", NotTaken, StateKind.AwaitingNotTaken)
        .On([Trigger.Cancel, Trigger.GoBack], "leave open", Always.Cancel, StateKind.Ready, StateKind.AwaitingRecheck)
        .On(Trigger.NextResident, "leave open, leave the resident", Always.NextResident, StateKind.AwaitingRoom)
        .On(Trigger.Place, "leave open, leave the resident", Always.Place, StateKind.AwaitingName, StateKind.AwaitingRoom)
        .On(Trigger.NotAReading, "typed: say so; chat: nothing", Always.Unknown, StateKind.Counting)
        .Ignore(
            Trigger.AboutRound, Trigger.Yes, Trigger.No, Trigger.Correction, Trigger.Qualifier,
            Trigger.Hedge, Trigger.Repeat, Trigger.Pause, Trigger.Continue, Trigger.Undo, Trigger.NextOrPrevious, Trigger.BirthDate,
            Trigger.BandNumber, Trigger.Query, Trigger.Worried, Trigger.NotPossible, Trigger.NothingHeard,
            Trigger.PartOfAReading);

    private static Turn Begun(Turn turn)
    {
        var counting = turn.Stage<Stage.Counting>();
        return counting.Begun ? turn : CountStart.Tone(turn, counting);
    }

    private static Turn Over(Turn turn)
    {
        var counting = turn.Stage<Stage.Counting>();
        return counting.Begun && ((DialogueEvent.TimerElapsed)turn.Event).Name == TimerNames.Count
            ? turn.Go(new Stage.AwaitingCount(counting.Sign, counting.Seconds, counting.Uneven)).Do(new Effect.Play(Tone.CountEnds))
            : turn;
    }

    // While breaths are counted nothing is said, for the resident must not know.
    private static Turn Early(Turn turn)
    {
        Turn guessed = turn.With(turn.Set.WithGuess(turn.Stage<Stage.Counting>().Sign))
            .Write(id => new AttemptDiscarded(
                id, turn.State.Aide, turn.At, turn.Set.Resident.Id, turn.Heard, null, null, "before the count was over"));
        return turn.Stage<Stage.Counting>().Sign == VitalSign.Pulse ? guessed.Say("Count until the tone.") : guessed;
    }

    private static Turn Uneven(Turn turn)
    {
        var counting = turn.Stage<Stage.Counting>();
        return counting.Sign == VitalSign.Pulse && counting.Seconds < 60
            ? CountStart.Again(turn, counting.Sign)
            : turn.Go(counting with { Uneven = counting.Uneven || counting.Sign == VitalSign.Pulse });
    }

    private static Turn NotTaken(Turn turn) =>
        turn.DiscardPending("not taken").OfferNotTaken(turn.Meant<Meaning.NotTaken>(), turn.Stage<Stage.Counting>().Sign);
}
