using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>Rows of the two states in which a value was read back and waits.</summary>
internal static class Pending
{
    private static StateKind[] Offered =>
    [
        StateKind.AwaitingConfirmation, StateKind.AwaitingSayingAgain, StateKind.AwaitingValue, StateKind.Ready, StateKind.AwaitingRecheck,
        StateKind.AwaitingAnswer,
    ];

    public static Page WithPending(this Page page) => page
        .WithTries(StateKind.Ready, StateKind.AwaitingRecheck)
        .On(Trigger.No, "discard, ask for the value", No, page.State, StateKind.AwaitingValue, StateKind.Ready, StateKind.AwaitingRecheck)
        .On(Trigger.Correction, "discard, read the new value back", Correct, Offered)
        .On(Trigger.Reading, "the same sign: as a value; else this one first", Reading, [.. Offered, StateKind.Saving])
        .On(Trigger.Qualifier, "add, read back again", turn => Qualify(turn, turn.Meant<Meaning.Qualifier>().How), page.State)
        .On(Trigger.Uneven, "add, read back again", turn => Qualify(turn, new Circumstances { Uneven = true }), page.State)
        .On(Trigger.NotPossible, "ask again, leave open after three", turn => turn.TryAgain("That is not possible."), page.State, StateKind.Ready, StateKind.AwaitingRecheck)
        .On(Trigger.Hedge, "refuse the guess", Hedge, page.State, StateKind.Ready, StateKind.AwaitingRecheck)
        .On(Trigger.NotTaken, "discard, read back not taken", NotTaken, StateKind.AwaitingNotTaken)
        .On(Trigger.Repeat, "read back again", Always.Repeat, page.State)
        .On([Trigger.Cancel, Trigger.Undo], "discard", Always.Cancel, StateKind.Ready, StateKind.AwaitingRecheck)
        .On(Trigger.GoBack, "discard, ask for the value", Anew, StateKind.AwaitingValue)
        .On(Trigger.NextResident, "discard, leave the resident", Always.NextResident, StateKind.AwaitingRoom)
        .On(Trigger.Place, "discard, leave the resident", Always.Place, StateKind.AwaitingName, StateKind.AwaitingRoom)
        .On(Trigger.Pause, "wait", Always.Pause, StateKind.Paused)
        .On([Trigger.StartCount, Trigger.Seconds], "discard, begin a count", CountStart.Begin, StateKind.Counting)
        .On(Trigger.Worried, "this one first", Always.AnswerFirst, page.State)
        .Ignore(
            [
                .. page.State == StateKind.AwaitingConfirmation ? new[] { Trigger.ValueAlone } : [], Trigger.AboutRound, Trigger.CountSaid, Trigger.Continue,
                Trigger.NextOrPrevious, Trigger.BirthDate, Trigger.BandNumber, Trigger.Query, Trigger.TimerElapsed, Trigger.Played,
            ]);

    public static (ReadBack ReadBack, string? Amends) Waiting(this Turn turn) => turn.State.Stage switch
    {
        Stage.AwaitingConfirmation s => (s.ReadBack, s.Amends),
        Stage.AwaitingSayingAgain s => (s.ReadBack, s.Amends),
        _ => throw new InvalidOperationException($"nothing was read back in {turn.State.Kind}"),
    };

    /// <summary>A resident's yes or no must not answer (safety 4): one that is much quieter than the reading is asked again.</summary>
    public static bool IsTooQuiet(this Turn turn, Heard reading) =>
        !turn.Said.Typed
        && turn.Said.LevelDecibels is { } answer
        && reading.LevelDecibels is { } said
        && answer < said - turn.Parts.Settings.QuieterBy;

    /// <summary>Discards what was read back and offers another value in its place.</summary>
    public static Turn Replace(this Turn turn, Reading reading, string why, Quantity? corrects)
    {
        (ReadBack waiting, string? amends) = turn.Waiting();
        return turn.Discard(waiting.Understood, waiting.Text, why).Offer(reading, amends, corrects);
    }

    private static Turn No(Turn turn)
    {
        (ReadBack waiting, string? amends) = turn.Waiting();
        if (turn.IsTooQuiet(waiting.Understood.Heard))
        {
            return turn.TryAgain("Was that you?");
        }

        Reading reading = waiting.Reading;
        Turn discarded = turn.Refuse(reading.Value).Discard(waiting.Understood, waiting.Text, "no");
        // What was said about the way it was taken may be what was wrong: it is said anew, with the value or after it.
        var how = new Circumstances { CountedSeconds = reading.How.CountedSeconds };
        return discarded.Fail("", new Stage.AwaitingValue(reading.Value.Sign, how, WhyAsked.Refused, null, amends)
        {
            Tries = turn.State.Stage.Tries,
        });
    }

    // A step back, and no refusal of the value.
    private static Turn Anew(Turn turn)
    {
        (ReadBack waiting, string? amends) = turn.Waiting();
        Reading reading = waiting.Reading;
        return turn.Discard(waiting.Understood, waiting.Text, "go back")
            .Ask(new Stage.AwaitingValue(reading.Value.Sign, new Circumstances { CountedSeconds = reading.How.CountedSeconds }, WhyAsked.Refused, null, amends));
    }

    private static Turn Correct(Turn turn)
    {
        (ReadBack waiting, string? amends) = turn.Waiting();
        Reading old = waiting.Reading;
        SpokenNumber number = turn.Meant<Meaning.Correction>().Number;
        Turn discarded = turn.Refuse(old.Value).Discard(waiting.Understood, waiting.Text, "corrected");
        return discarded.OfferNumber(old.Value.Sign, number, old.How, amends, corrects: old.Value);
    }

    private static Turn Reading(Turn turn)
    {
        Reading said = turn.Meant<Meaning.ReadingSaid>().Reading;
        Reading old = turn.Waiting().ReadBack.Reading;
        if (said.Value.Sign != old.Value.Sign)
        {
            return Always.AnswerFirst(turn);
        }

        Reading anew = said with { How = old.How.With(said.How) };
        return turn.State.Stage is Stage.AwaitingSayingAgain stage ? turn.SaidAgain(stage, anew) : turn.Replace(anew, "said anew", null);
    }

    private static Turn Qualify(Turn turn, Circumstances how)
    {
        Reading old = turn.Waiting().ReadBack.Reading;
        return how.Sign() is null || how.Sign() == old.Value.Sign
            ? turn.OfferQualified(old with { How = old.How.With(how) })
            : turn.With(turn.Set with { Upcoming = turn.Set.Upcoming.With(how) }).Say("Noted for the reading that comes.");
    }

    // The value is what was heard before; only the way it was taken is new. It is read back again and needs its own yes.
    private static Turn OfferQualified(this Turn turn, Reading reading)
    {
        (ReadBack waiting, _) = turn.Waiting();
        ReadBack anew = ReadBack.Of(waiting.Understood with { Reading = reading }, turn.TextOf(reading), turn.At);
        return turn.State.Stage is Stage.AwaitingSayingAgain again
            ? turn.Ask(again with { ReadBack = anew, Asked = 0 })
            : turn.Ask(turn.Stage<Stage.AwaitingConfirmation>() with { ReadBack = anew, Asked = 0 });
    }

    private static Turn Hedge(Turn turn) =>
        turn.With(turn.Set.WithGuess(turn.Waiting().ReadBack.Reading.Value.Sign)).TryAgain("A guess can't be saved.");

    private static Turn NotTaken(Turn turn)
    {
        (ReadBack waiting, _) = turn.Waiting();
        return turn.Discard(waiting.Understood, waiting.Text, "not taken")
            .OfferNotTaken(turn.Meant<Meaning.NotTaken>(), waiting.Reading.Value.Sign);
    }

    private static Turn Refuse(this Turn turn, Quantity value) => turn.With(turn.Set with { Refused = turn.Set.Refused.Add(value) });
}
