using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;

namespace HandsFree.Core.Dialogue;

/// <summary>A value was read back that needs more than a yes: it is said again. The same value confirms, another one takes its
/// place.</summary>
internal static class AwaitingSayingAgainState
{
    public static Page Page() => new Page(StateKind.AwaitingSayingAgain)
        .WithCommands()
        .WithPending()
        .On(
            Trigger.ValueAlone,
            "the same: confirm and save; another: read it back",
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
        return turn.ReadingOf(old.Value.Sign, number, old.How, old.Value) is { } reading
            ? turn.SaidAgain(stage, reading)
            : turn.TryAgain($"{Sentence.Capital(Numbers.Of(number))}, is not possible.");
    }

    /// <summary>The second saying: it confirms, or takes the first one's place.</summary>
    public static Turn SaidAgain(this Turn turn, Stage.AwaitingSayingAgain stage, Reading reading)
    {
        if (ConfirmationStrength.IsDoubtful(turn.Said, turn.Parts.Settings))
        {
            return turn.TryAgain("Not sure.");
        }

        var again = new Understood(turn.Heard, reading);
        if (stage.ReadBack.BySayingAgain(again, turn.Attribute(stage.ReadBack.Understood, stage.Amends)) is { } confirmed)
        {
            return turn.RecordOrAsk(confirmed, stage.Amends);
        }

        Stage failed = stage with { Tries = stage.Tries + 1 };
        return failed.Tries >= Trying.Most
            ? turn.TryAgain("That is another number.")
            : turn.Go(failed).Replace(reading, "second saying differs", null);
    }
}
