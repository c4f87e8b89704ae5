namespace HandsFree.Core.Dialogue;

/// <summary>Three tries, then it is left open.</summary>
internal static class Trying
{
    public const int Most = 3;

    /// <summary>The state in hand was not answered: it asks again with its next prompt, or gives up.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="words">What is said before the prompt.</param>
    public static Turn TryAgain(this Turn turn, string words)
    {
        Stage stage = turn.State.Stage;
        Stage next = stage with { Asked = stage.Asked + 1, Tries = stage.Tries + 1 };
        return next.Tries >= Most ? turn.GiveUp(words) : turn.Ask(words, next);
    }

    /// <summary>A value failed: the next state asks for it for the first time, or it is left open.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="words">What is said before the prompt.</param>
    /// <param name="next">What asks for it, with the tries so far.</param>
    public static Turn Fail(this Turn turn, string words, Stage next)
    {
        Stage failed = next with { Tries = next.Tries + 1 };
        return failed.Tries >= Most ? turn.Go(failed).GiveUp(words) : turn.Ask(words, failed);
    }

    private static Turn GiveUp(this Turn turn, string words) => turn.State.Stage switch
    {
        Stage.AwaitingRoom => turn.Go(new Stage.AwaitingRoom(Quiet: true)).Say(words),
        Stage.AwaitingName s => turn.IdentityFailed(s.Resident, "name not agreed", words),
        Stage.AwaitingSecondIdentifier s => turn.IdentityFailed(s.Resident, "second identifier does not match", words),
        Stage.NotSaved => turn.LoseUnsaved(),
        // A confirmed value is never lost for want of an answer; the graver one counts.
        Stage.AwaitingAnswer { Confirmed: not null } s => Symptoming.Unanswered(turn, s).Save(),
        Stage.AwaitingAnswer { Asleep: { } asleep } => turn.RecordNotTaken(asleep, Sleeping.NotKnown).Save(),
        Stage.AwaitingAnswer { Unwell: { } unwell } => Unwelling.Unanswered(turn, unwell).Save(),
        _ => turn.GiveUpValue(words),
    };

    private static Turn GiveUpValue(this Turn turn, string words)
    {
        Turn abandoned = turn.Abandon("left open");
        string what = turn.State.Stage.OpenSign() is { } sign ? $"{SignNames.Capital(sign)} is left open." : "Left open.";
        return abandoned.Go(abandoned.Set.Base()).Say(Sentence.Join(words, what));
    }
}
