using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>A recheck waits: its bare number is understood, and every other reading too, for a rest is time to measure in.</summary>
internal static class AwaitingRecheckState
{
    public static Page Page() => new Page(StateKind.AwaitingRecheck)
        .WithMeasuring()
        .On(
            Trigger.ValueAlone,
            "read back",
            Value,
            StateKind.AwaitingConfirmation,
            StateKind.AwaitingSayingAgain,
            StateKind.AwaitingValue,
            StateKind.AwaitingAnswer)
        .On(Trigger.NothingHeard, "ask for it, twice", Ask, StateKind.AwaitingRecheck)
        .On(Trigger.TimerElapsed, "the rest is over: ask for it", RestOver, StateKind.AwaitingRecheck, StateKind.Ready)
        .On(Trigger.Repeat, "say what to do", Always.Repeat, StateKind.AwaitingRecheck)
        .On([Trigger.Cancel, Trigger.GoBack], "later", Later, StateKind.Ready)
        .On(Trigger.NotAReading, "typed: say so; chat: nothing", Always.Unknown, StateKind.AwaitingRecheck)
        .Ignore(
            Trigger.Yes, Trigger.No, Trigger.Correction, Trigger.CountSaid, Trigger.Continue, Trigger.NextOrPrevious, Trigger.BirthDate,
            Trigger.BandNumber, Trigger.Query, Trigger.Played);

    private static Turn Value(Turn turn) =>
        turn.OfferNumber(turn.Stage<Stage.AwaitingRecheck>().Sign, turn.Meant<Meaning.ValueAlone>().Number, Circumstances.Unsaid, null);

    private static Turn Ask(Turn turn)
    {
        var stage = turn.Stage<Stage.AwaitingRecheck>();
        bool due = turn.Set.Waiting.Any(w => w.Sign == stage.Sign && w.DueAt <= turn.At);
        return due && !stage.Silent && stage.Asked < 2 ? turn.Ask(stage with { Asked = stage.Asked + 1 }) : turn;
    }

    private static Turn RestOver(Turn turn)
    {
        var stage = turn.Stage<Stage.AwaitingRecheck>();
        bool due = turn.Set.Waiting.Any(w => w.Sign == stage.Sign && w.DueAt <= turn.At);
        return due && !stage.Silent && ((DialogueEvent.TimerElapsed)turn.Event).Name == TimerNames.Recheck(stage.Sign)
            ? turn.Say($"The rest is over. Now the {SignNames.Of(stage.Sign)}.")
            : turn;
    }

    private static Turn Later(Turn turn) =>
        turn.Go(new Stage.Ready()).Say($"The {SignNames.Of(turn.Stage<Stage.AwaitingRecheck>().Sign)} waits.");
}
