using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>Rows of the two states in which readings come in any order: nothing waits, or a recheck waits.</summary>
internal static class Measuring
{
    private static StateKind[] Offered =>
    [
        StateKind.AwaitingConfirmation, StateKind.AwaitingSayingAgain, StateKind.AwaitingValue, StateKind.AwaitingAnswer,
    ];

    public static Page WithMeasuring(this Page page) => page
        .WithCommands()
        .On(Trigger.Reading, "read back", turn => turn.Offer(turn.Meant<Meaning.ReadingSaid>().Reading), Offered)
        .On(Trigger.NotPossible, "repeat the number, ask for another", NotPossible, [StateKind.AwaitingValue, page.State])
        .On(Trigger.Qualifier, "add to the last reading, or keep for the next", Qualify, [.. Offered, page.State])
        .On(Trigger.Uneven, "add to the last pulse, or keep for the next", Uneven, [.. Offered, page.State])
        .On(Trigger.StartCount, "begin a count", CountStart.Begin, StateKind.Counting)
        .On(Trigger.Seconds, "begin a count of that length", CountStart.Begin, StateKind.Counting)
        .On(Trigger.Hedge, "refuse the guess, offer the count", Hedge, page.State)
        .On(Trigger.AboutRound, "machine, rest, silence of the cuff, private, who is next", RoundWords.Hear, [page.State, StateKind.Ready, StateKind.AwaitingAnswer, StateKind.Saving])
        .On(Trigger.NotTaken, "read back", NotTaken, StateKind.AwaitingNotTaken)
        .On(Trigger.Worried, "ask whether to report", Worried, StateKind.AwaitingAnswer)
        .On(Trigger.Undo, "name the last saved, ask", Undoing.Ask, [StateKind.AwaitingUndo, page.State])
        .On(Trigger.WrongResident, "ask whether this visit is taken back", Undoing.AskWrongResident, StateKind.AwaitingAnswer, StateKind.AwaitingRoom)
        .On(Trigger.Pause, "wait", Always.Pause, StateKind.Paused)
        .On(Trigger.NextResident, "leave the resident", Always.NextResident, StateKind.AwaitingRoom)
        .On(Trigger.Place, "leave the resident, find the next", Always.Place, StateKind.AwaitingName, StateKind.AwaitingRoom)
        .On(Trigger.PartOfAReading, "say so", turn => turn.Say("I heard only a part. Say the whole reading."), page.State);

    private static Turn Hedge(Turn turn) =>
        turn.With(turn.Set.WithGuess(turn.Meant<Meaning.Hedge>().Sign)).Say("A guess can't be saved. Count, or measure again.");

    private static Turn NotTaken(Turn turn) =>
        turn.OfferNotTaken(turn.Meant<Meaning.NotTaken>(), (turn.State.Stage as Stage.AwaitingRecheck)?.Sign);

    private static Turn Worried(Turn turn) => turn.Ask(new Stage.AwaitingAnswer(Question.Worried, "Tell the nurse that you are worried?"));

    private static Turn NotPossible(Turn turn)
    {
        var said = turn.Meant<Meaning.NotPossible>();
        string number = Numbers.Of(said.Number);
        return said.Sign is { } sign
            ? turn.AskForAnother(sign, Circumstances.Unsaid, $"{SignNames.Of(sign)}, {number}", null)
            : turn.Say($"{Sentence.Capital(number)}, is not possible.");
    }

    private static Turn Qualify(Turn turn) => turn.Qualify(turn.Meant<Meaning.Qualifier>().How);

    private static Turn Uneven(Turn turn) => turn.Qualify(new Circumstances { Uneven = true });

    private static Turn Qualify(this Turn turn, Circumstances how)
    {
        if (how.Position == BodyPosition.Standing && turn.Set.Posture == PostureStep.StandingUp)
        {
            return PostureTest.Stands(turn);
        }

        VitalSign? sign = how.Sign();
        SavedItem? last = turn.Set.Saved.LastOrDefault(s => s.Reading is not null && s.Sign == sign);
        if (last?.Reading is not { } reading)
        {
            return turn.With(turn.Set with { Upcoming = turn.Set.Upcoming.With(how) }).Say("Noted for the reading that comes.");
        }

        Reading said = reading.Confirmed.Reading;
        return turn.OfferMore(said with { How = said.How.With(how) }, reading.Id);
    }
}
