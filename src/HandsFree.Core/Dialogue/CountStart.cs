using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>Begins a count: for the pulse 30 seconds, 60 when it is uneven; breaths 60 seconds, announced by a tone alone, for the
/// resident must not know.</summary>
internal static class CountStart
{
    private const int Full = 60;

    /// <summary>Begins; a value that waits is left, for it is counted instead.</summary>
    public static Turn Begin(Turn turn)
    {
        VitalSign sign = Sign(turn);
        bool uneven = turn.Set.Upcoming.Uneven;
        int seconds = (sign, uneven, turn.Said.Meaning) switch
        {
            (VitalSign.Respirations, _, Meaning.Counting { Word: CountWord.ThirtySeconds }) when turn.Parts.Settings.BreathsInThirtySeconds => 30,
            (VitalSign.Respirations, _, _) or (_, true, _) or (_, _, Meaning.Counting { Word: CountWord.SixtySeconds }) => Full,
            (_, _, Meaning.Counting { Word: CountWord.ThirtySeconds }) => 30,
            // A pulse that is counted again is counted in full (clinical-rules 5.1).
            _ when turn.State.Stage is Stage.AwaitingRecheck => Full,
            _ => turn.Parts.Settings.PulseCountSeconds,
        };
        return Start(turn.DiscardPending("counted instead"), sign, seconds, uneven);
    }

    /// <summary>The pulse is uneven: 60 seconds from the beginning.</summary>
    public static Turn Again(Turn turn, VitalSign sign) =>
        Start(turn.Do(new Effect.StopTimer(TimerNames.Count)), sign, Full, uneven: true);

    private static Turn Start(Turn turn, VitalSign sign, int seconds, bool uneven)
    {
        return Announce(turn.With(turn.Set.WithoutGuess(sign)), new Stage.Counting(sign, seconds, Begun: false) { Uneven = uneven });
    }

    /// <summary>The same count from its beginning, breaths by a tone alone.</summary>
    public static Turn Announce(Turn turn, Stage.Counting counting) => counting.Sign == VitalSign.Respirations
        ? Tone(turn, counting)
        : turn.Go(counting with { Begun = false })
            .Say($"{(counting.Uneven ? "Uneven. " : "")}Count the pulse for {(counting.Seconds == Full ? "sixty" : "thirty")} seconds, from the tone.");

    /// <summary>The tone, and the clock from it.</summary>
    public static Turn Tone(Turn turn, Stage.Counting counting) => turn
        .Go(counting with { Begun = true })
        .Do(new Effect.Play(Dialogue.Tone.CountBegins))
        .Do(new Effect.StartTimer(TimerNames.Count, TimeSpan.FromSeconds(counting.Seconds)));

    // What is in hand, where it is counted; else the pulse, and breaths straight after it.
    private static VitalSign Sign(Turn turn)
    {
        VitalSign? inHand = turn.State.Stage is Stage.AwaitingRecheck recheck ? recheck.Sign : turn.State.Stage.OpenSign();
        return inHand switch
        {
            _ when turn.Said.Meaning is Meaning.Counting { Word: CountWord.StartPulse } => VitalSign.Pulse,
            VitalSign.Pulse or VitalSign.Respirations => inHand.Value,
            _ => turn.Set.HasReading(VitalSign.Pulse) || turn.Set.Held.Count > 0 ? VitalSign.Respirations : VitalSign.Pulse,
        };
    }
}
