using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>The count is over: how many?</summary>
internal static class AwaitingCountState
{
    private static StateKind[] Offered =>
    [
        StateKind.AwaitingConfirmation, StateKind.AwaitingSayingAgain, StateKind.AwaitingValue, StateKind.AwaitingAnswer,
        StateKind.AwaitingCount, StateKind.Counting, StateKind.Ready, StateKind.AwaitingRecheck,
    ];

    private static StateKind[] Asked => [StateKind.AwaitingCount, StateKind.Ready, StateKind.AwaitingRecheck];

    public static Page Page() => new Page(StateKind.AwaitingCount)
        .WithCommands()
        .WithTries(StateKind.Ready, StateKind.AwaitingRecheck)
        .On(Trigger.CountSaid, "read back the count and what it makes", turn => Count(turn, turn.Meant<Meaning.CountSaid>().Counted), Offered)
        .On(Trigger.ValueAlone, "read back the count and what it makes", turn => Count(turn, turn.Meant<Meaning.ValueAlone>().Number.First), Offered)
        .On(Trigger.Reading, "the counted sign: read back; else this one first", Reading, Offered)
        .On(Trigger.Uneven, "count sixty seconds", Uneven, StateKind.Counting, StateKind.AwaitingCount)
        .On([Trigger.StartCount, Trigger.Seconds], "begin anew", CountStart.Begin, StateKind.Counting)
        .On(Trigger.Hedge, "refuse the guess", Hedge, Asked)
        .On(Trigger.NotPossible, "ask again, leave open after three", turn => turn.TryAgain("That is not possible."), Asked)
        .On([Trigger.Yes, Trigger.No, Trigger.Correction], "ask again, leave open after three", turn => turn.TryAgain(""), Asked)
        .On(Trigger.NotTaken, "read back not taken", NotTaken, StateKind.AwaitingNotTaken)
        .On(Trigger.Repeat, "ask again", Always.Repeat, StateKind.AwaitingCount)
        .On([Trigger.Cancel, Trigger.GoBack], "leave open", Always.Cancel, StateKind.Ready, StateKind.AwaitingRecheck)
        .On(Trigger.NextResident, "leave open, leave the resident", Always.NextResident, StateKind.AwaitingRoom)
        .On(Trigger.Place, "leave open, leave the resident", Always.Place, StateKind.AwaitingName, StateKind.AwaitingRoom)
        .On(Trigger.Pause, "wait", Always.Pause, StateKind.Paused)
        .On([Trigger.Undo, Trigger.Worried], "this one first", Always.AnswerFirst, StateKind.AwaitingCount)
        .Ignore(
            Trigger.AboutRound, Trigger.Qualifier, Trigger.Continue, Trigger.NextOrPrevious, Trigger.BirthDate, Trigger.BandNumber, Trigger.Query,
            Trigger.TimerElapsed, Trigger.Played);

    private static Turn Count(Turn turn, decimal counted)
    {
        var stage = turn.Stage<Stage.AwaitingCount>();
        var how = new Circumstances { Uneven = stage.Uneven };
        return Counts.Reading(stage.Sign, counted, stage.Seconds, how) is Meaning.ReadingSaid said
            ? turn.OfferCount(said.Reading)
            : turn.TryAgain($"{Sentence.Capital(DigitWords.Of(counted))}, is not possible.");
    }

    private static Turn Reading(Turn turn)
    {
        Reading said = turn.Meant<Meaning.ReadingSaid>().Reading;
        var stage = turn.Stage<Stage.AwaitingCount>();
        if (said.Value.Sign != stage.Sign)
        {
            return Always.AnswerFirst(turn);
        }

        if (said.How.Counted is not null)
        {
            return turn.OfferCount(said);
        }

        // The rate that she made of her count: it must be one that the method can give (an odd one from 30 seconds is not).
        decimal counted = Rate(said.Value) * stage.Seconds / 60m;
        return decimal.Truncate(counted) == counted
            ? Count(turn, counted)
            : turn.TryAgain($"{Sentence.Capital(DigitWords.Of(Rate(said.Value)))}, is not possible from {(stage.Seconds == 30 ? "thirty" : "sixty")} seconds.");
    }

    private static decimal Rate(Quantity value) => value switch
    {
        HeartRate v => v.PerMinute,
        RespiratoryRate v => v.PerMinute,
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "nothing that is counted"),
    };

    private static Turn Uneven(Turn turn)
    {
        var stage = turn.Stage<Stage.AwaitingCount>();
        return stage.Sign == VitalSign.Pulse && stage.Seconds < 60
            ? CountStart.Again(turn, stage.Sign)
            : turn.Ask("Noted.", stage with { Uneven = stage.Uneven || stage.Sign == VitalSign.Pulse });
    }

    private static Turn Hedge(Turn turn) =>
        turn.With(turn.Set.WithGuess(turn.Stage<Stage.AwaitingCount>().Sign)).TryAgain("A guess can't be saved.");

    private static Turn NotTaken(Turn turn) =>
        turn.OfferNotTaken(turn.Meant<Meaning.NotTaken>(), turn.Stage<Stage.AwaitingCount>().Sign);
}
