using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Rounds;

namespace HandsFree.Core.Dialogue;

/// <summary>Readings in any order. Nothing was asked: speech that is no reading is ignored in silence (safety 4). When the aide is
/// silent, the program names the next reading once.</summary>
internal static class ReadyState
{
    public static Page Page() => new Page(StateKind.Ready)
        .WithMeasuring()
        .On(Trigger.NothingHeard, "name the next reading, once", Lead, StateKind.Ready)
        .On(
            Trigger.ValueAlone,
            "read back where its name was asked for; else ask for the whole reading",
            Value,
            StateKind.AwaitingConfirmation,
            StateKind.AwaitingSayingAgain,
            StateKind.AwaitingValue,
            StateKind.AwaitingAnswer,
            StateKind.Ready)
        .On(Trigger.TimerElapsed, "the rest is over: say so", RestClock.Over, StateKind.Ready)
        .On(Trigger.Repeat, "say the last saved", RepeatLast, StateKind.Ready)
        .On(Trigger.Cancel, "nothing is open", turn => turn.Say(turn.Set.Saved.Count > 0 ? "Nothing is open. To take back the last value, say undo." : "Nothing is open."), StateKind.Ready)
        .On(Trigger.GoBack, "name the last saved, ask", Undoing.Ask, StateKind.AwaitingUndo, StateKind.Ready)
        .On(Trigger.NotAReading, "typed: say so; chat: nothing", Always.Unknown, StateKind.Ready)
        .Ignore(
            Trigger.Yes, Trigger.No, Trigger.Correction, Trigger.CountSaid, Trigger.Continue, Trigger.NextOrPrevious, Trigger.BirthDate,
            Trigger.BandNumber, Trigger.Query, Trigger.Played);

    // In a posture test the program says by itself what comes next.
    private static Turn Lead(Turn turn) => turn.State.Stage.Asked > 0 || turn.State.Stage.Silent || turn.Set.Posture != PostureStep.None ? turn : Leading.Next(turn);

    private static Turn Value(Turn turn) => turn.Stage<Stage.Ready>().Led is { } sign
        ? turn.OfferNumber(sign, turn.Meant<Meaning.ValueAlone>().Number, Circumstances.Unsaid, null)
        : turn.Say("Say what it is, then the number.");

    private static Turn RepeatLast(Turn turn) =>
        turn.Say(turn.Set.Saved.Count > 0 ? $"Saved: {turn.Set.Saved[^1].Text}." : "Nothing is saved for this resident.");
}
