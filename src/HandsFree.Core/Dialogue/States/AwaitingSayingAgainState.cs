using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>A value was read back that needs more than a yes: it is said again. The same value in other words confirms. The same sound is
/// misheard in the same way, and another value may be the mishearing: both are read back and need a yes.</summary>
internal static class AwaitingSayingAgainState
{
    public static Page Page() => new Page(StateKind.AwaitingSayingAgain)
        .WithCommands()
        .WithPending()
        .On(
            Trigger.ValueAlone,
            "the same in other words: confirm and save; else read it back and ask for a yes",
            Value,
            StateKind.Saving,
            StateKind.AwaitingAnswer,
            StateKind.AwaitingSayingAgain,
            StateKind.AwaitingConfirmation,
            StateKind.AwaitingValue,
            StateKind.Ready,
            StateKind.AwaitingRecheck)
        .On(
            Trigger.Yes,
            "a yes is not enough",
            turn => turn.TryAgain("Agreeing is not enough."),
            StateKind.AwaitingSayingAgain,
            StateKind.Ready,
            StateKind.AwaitingRecheck);

    private static Turn Value(Turn turn)
    {
        var stage = turn.Stage<Stage.AwaitingSayingAgain>();
        Reading old = stage.ReadBack.Reading;
        SpokenNumber number = turn.Meant<Meaning.ValueAlone>().Number;
        // Of a counted value both numbers were read back: the count and what it makes.
        if (old.How.CountedSeconds is not null && QuantityFrom.Number(old.Value.Sign, number, null) is { } made && made == old.Value)
        {
            return turn.SaidAgain(stage, old);
        }

        return turn.ReadingOf(old.Value.Sign, number, old.How, old.Value) is { } reading
            ? turn.SaidAgain(stage, reading)
            : turn.TryAgain($"{Sentence.Capital(Numbers.Of(number))}, is not possible.");
    }

    /// <summary>The second saying: it confirms, or takes the first one's place.</summary>
    public static Turn SaidAgain(this Turn turn, Stage.AwaitingSayingAgain stage, Reading reading)
    {
        if (Doubt.IsDoubtful(turn.Said, turn.Parts.Settings.DoubtMargin, turn.Parts.Settings) && !turn.Agrees(stage, reading))
        {
            return turn.Go(stage with { Hearings = stage.Hearings.And(turn.Said, reading) }).TryAgain("Not sure.");
        }

        // Thirteen and thirty may have been misheard twice in the same way.
        bool digits = turn.Said.Typed || DigitWords.SaidDigitByDigit(turn.Said.Words);
        if (!digits && stage.ReadBack.Reading.Value == reading.Value && ConfusablePairs.AlwaysInDigits(reading.Value))
        {
            return turn.TryAgain("Each digit by itself.");
        }

        var again = new Understood(turn.Heard, reading);
        if (again.Reading.Value == stage.ReadBack.Reading.Value && again.Reading.How != stage.ReadBack.Reading.How)
        {
            return turn.OfferMore(again.Reading, stage.Amends);
        }

        if (reading.Value == stage.ReadBack.Reading.Value && turn.SaidAlike(stage, reading))
        {
            return turn.Ask(new Stage.AwaitingConfirmation(stage.ReadBack, stage.Amends) { Tries = stage.Tries, SaysYesOrNo = true });
        }

        if (stage.ReadBack.BySayingAgain(again, turn.Attribute(stage.ReadBack.Understood, stage.Amends)) is { } confirmed)
        {
            return turn.RecordOrAsk(confirmed, stage.Amends);
        }

        Stage failed = stage with { Tries = stage.Tries + 1 };
        return failed.Tries >= Trying.Most
            ? turn.TryAgain("That is another number.")
            : turn.Go(failed).Discard(stage.ReadBack.Understood, stage.ReadBack.Text, "second saying differs")
                .Offer(turn.Understand(reading, null), turn.Said, stage.Amends, another: true);
    }

    // A doubtful second saying confirms where it was likelier the value read back than all else, and both sayings together leave no doubt.
    private static bool Agrees(this Turn turn, Stage.AwaitingSayingAgain stage, Reading reading) =>
        turn.Said.Probability > 0.5
        && reading.Value == stage.ReadBack.Reading.Value
        && stage.Hearings.Count > 0
        && !turn.IsDoubtfulTogether(stage, reading);

    // The same sound is misheard in the same way, and what contradicts the other hearings is not sure: then a yes is needed.
    private static bool SaidAlike(this Turn turn, Stage.AwaitingSayingAgain stage, Reading reading) =>
        !turn.Said.Typed
        && stage.Hearings.Count > 0
        && (stage.Hearings.Any(h => h.Sound == NumberSound.Of(turn.Said.Words)) || turn.IsDoubtfulTogether(stage, reading));

    private static bool IsDoubtfulTogether(this Turn turn, Stage.AwaitingSayingAgain stage, Reading reading) =>
        Together.IsDoubtful(stage.Hearings.And(turn.Said, reading), reading.Value, turn.Set.Refused, turn.Parts.Settings);
}
