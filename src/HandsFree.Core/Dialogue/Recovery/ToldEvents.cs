using HandsFree.Core.Meanings;

namespace HandsFree.Core.Dialogue.Recovery;

/// <summary>What of that which happens to a dialogue is kept.</summary>
public static class ToldEvents
{
    /// <summary>What is kept of an event; null where it changed nothing. Digits that may unlock a session are never kept: the dialogue only
    /// passes them on.</summary>
    /// <param name="before">The state that the event met.</param>
    /// <param name="happened">The event.</param>
    /// <param name="step">What it led to.</param>
    public static DialogueEvent? Of(DialogueState before, DialogueEvent happened, DialogueStep step)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(step);
        bool locked = before.Kind == StateKind.Locked && happened is DialogueEvent.Utterance;
        return step switch
        {
            _ when locked && step.Effects.Any(e => e is Effect.Unlock) => new DialogueEvent.Utterance(happened.At, new Meaning.BandNumber(""), "") { Typed = true },
            { Effects.Count: 0 } when locked || ReferenceEquals(step.State, before) => null,
            _ => happened,
        };
    }
}
