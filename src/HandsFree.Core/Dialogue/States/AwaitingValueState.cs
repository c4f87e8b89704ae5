using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>A value was refused, can't be, or was doubtful: its bare number is awaited.</summary>
internal static class AwaitingValueState
{
    private static StateKind[] Offered =>
    [
        StateKind.AwaitingConfirmation, StateKind.AwaitingSayingAgain, StateKind.AwaitingValue, StateKind.AwaitingAnswer, StateKind.Ready,
        StateKind.AwaitingRecheck,
    ];

    private static StateKind[] Asked => [StateKind.AwaitingValue, StateKind.Ready, StateKind.AwaitingRecheck];

    public static Page Page() => new Page(StateKind.AwaitingValue)
        .WithCommands()
        .WithTries(StateKind.Ready, StateKind.AwaitingRecheck)
        .On(Trigger.ValueAlone, "read back", turn => Number(turn, turn.Meant<Meaning.ValueAlone>().Number), Offered)
        .On(Trigger.Correction, "read back", turn => Number(turn, turn.Meant<Meaning.Correction>().Number), Offered)
        .On(Trigger.CountSaid, "read back", turn => Number(turn, new SpokenNumber(turn.Meant<Meaning.CountSaid>().Counted)), Offered)
        .On(Trigger.Reading, "the awaited sign: read back; else this one first", Reading, Offered)
        .On(Trigger.NotPossible, "repeat the number, ask again", NotPossible, Asked)
        .On(Trigger.Hedge, "refuse the guess", Hedge, Asked)
        .On(Trigger.Qualifier, "keep for the value", turn => Qualify(turn, turn.Meant<Meaning.Qualifier>().How), StateKind.AwaitingValue)
        .On(Trigger.Uneven, "keep for the value", turn => Qualify(turn, new Circumstances { Uneven = true }), StateKind.AwaitingValue)
        .On(Trigger.NotTaken, "read back not taken", NotTaken, StateKind.AwaitingNotTaken)
        .On([Trigger.StartCount, Trigger.Seconds], "begin a count", CountStart.Begin, StateKind.Counting)
        .On([Trigger.Yes, Trigger.No], "ask again, leave open after three", turn => turn.TryAgain(""), Asked)
        .On(Trigger.Repeat, "ask again", Always.Repeat, StateKind.AwaitingValue)
        .On([Trigger.Cancel, Trigger.GoBack], "leave open", Always.Cancel, StateKind.Ready, StateKind.AwaitingRecheck)
        .On(Trigger.NextResident, "leave open, leave the resident", Always.NextResident, StateKind.AwaitingRoom)
        .On(Trigger.Place, "leave open, leave the resident", Always.Place, StateKind.AwaitingName, StateKind.AwaitingRoom)
        .On(Trigger.Pause, "wait", Always.Pause, StateKind.Paused)
        .On([Trigger.Undo, Trigger.Worried], "this one first", Always.AnswerFirst, StateKind.AwaitingValue)
        .Ignore(
            Trigger.AboutRound, Trigger.Continue, Trigger.NextOrPrevious, Trigger.BirthDate, Trigger.BandNumber, Trigger.Query, Trigger.TimerElapsed,
            Trigger.Played);

    private static Turn Number(Turn turn, SpokenNumber number)
    {
        var stage = turn.Stage<Stage.AwaitingValue>();
        return turn.OfferNumber(stage.Sign, number, stage.How, stage.Amends);
    }

    private static Turn Reading(Turn turn)
    {
        var stage = turn.Stage<Stage.AwaitingValue>();
        Reading said = turn.Meant<Meaning.ReadingSaid>().Reading;
        return said.Value.Sign == stage.Sign
            ? turn.Offer(said with { How = stage.How.With(said.How) }, stage.Amends)
            : Always.AnswerFirst(turn);
    }

    private static Turn NotPossible(Turn turn)
    {
        var stage = turn.Stage<Stage.AwaitingValue>();
        string number = Numbers.Of(turn.Meant<Meaning.NotPossible>().Number);
        return turn.AskForAnother(stage.Sign, stage.How, $"{SignNames.Of(stage.Sign)}, {number}", stage.Amends);
    }

    private static Turn Hedge(Turn turn) =>
        turn.With(turn.Set.WithGuess(turn.Stage<Stage.AwaitingValue>().Sign)).TryAgain("A guess can't be saved. Count, or measure again.");

    private static Turn Qualify(Turn turn, Circumstances how)
    {
        var stage = turn.Stage<Stage.AwaitingValue>();
        VitalSign? sign = how.Sign();
        return sign is null || sign == stage.Sign
            ? turn.Ask("Noted.", stage with { How = stage.How.With(how) })
            : turn.With(turn.Set with { Upcoming = turn.Set.Upcoming.With(how) }).Say("Noted for the reading that comes.");
    }

    private static Turn NotTaken(Turn turn) =>
        turn.DiscardPending("not taken").OfferNotTaken(turn.Meant<Meaning.NotTaken>(), turn.Stage<Stage.AwaitingValue>().Sign);
}
