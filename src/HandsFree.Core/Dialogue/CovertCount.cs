using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Dialogue;

/// <summary>Breaths are counted straight after the pulse, the fingers still on the wrist, announced by a tone alone, for the resident
/// must not know. Both counts are read back afterwards, one after the other, each with its own yes.</summary>
internal static class CovertCount
{
    /// <summary>A pulse was counted: breaths next, where they are due and nothing about the pulse needs words now.</summary>
    public static Turn OfferCount(this Turn turn, Reading reading) =>
        reading.Value.Sign == VitalSign.Pulse
        && turn.StillDue().Contains(VitalSign.Respirations)
        && (turn.Set.StoppedAt is null || turn.Set.Late)
        && turn.NeedsNoWords(reading)
            ? CountStart.Tone(turn.Hold(reading), new Stage.Counting(VitalSign.Respirations, 60, Begun: false))
            : turn.Set.Held.Count > 0
                ? ReadBackNext(turn.Hold(reading))
                : turn.Offer(reading);

    /// <summary>Wherever nothing else is in hand, the next held count is read back.</summary>
    public static Turn AtRest(Turn turn) =>
        turn.State.Stage is Stage.Ready or Stage.AwaitingRecheck && turn.State.Set is { Held.Count: > 0 } ? ReadBackNext(turn) : turn;

    // "Use the call light now" does not wait for the read-back (safety 15).
    private static Turn Hold(this Turn turn, Reading reading)
    {
        Understood understood = turn.Understand(reading, null);
        turn = turn.With(turn.Set with { Held = turn.Set.Held.Add(new HeldCount(understood, turn.Said)) });
        return turn.WarnOfDanger(understood.Reading, turn.Decide(understood.Reading));
    }

    private static Turn ReadBackNext(Turn turn)
    {
        HeldCount next = turn.Set.Held[0];
        return turn.With(turn.Set with { Held = turn.Set.Held.RemoveAt(0) }).Offer(next.Understood, next.Said, null);
    }

    private static bool NeedsNoWords(this Turn turn, Reading reading) =>
        turn.Decide(reading) is { Outcome: Outcome.Accept, Recheck: null }
        && !Doubt.IsDoubtful(turn.Said, turn.Parts.Settings.DoubtMargin, turn.Parts.Settings)
        && !turn.NeedsSayingAgain(turn.Said, reading);
}
