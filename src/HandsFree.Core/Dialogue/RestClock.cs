using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>The rest before a blood pressure, counted from when the resident was last active (safety 1). It is no wait: the other
/// readings fill it, "was resting" satisfies it, and a pressure that is said before its end is taken.</summary>
internal static class RestClock
{
    /// <summary>Begins the clock where a pressure is still due.</summary>
    public static Turn Begin(Turn turn) => turn.StillDue().Contains(VitalSign.BloodPressure)
        ? turn.With(turn.Set with { RestingSince = turn.At }).Do(new Effect.StartTimer(TimerNames.Rest, turn.Parts.Settings.RestBeforePressure))
        : turn;

    public static Turn End(Turn turn) => turn.With(turn.Set with { RestingSince = null }).Do(new Effect.StopTimer(TimerNames.Rest));

    /// <summary>What is left of the rest, zero where it is done.</summary>
    public static TimeSpan Left(Turn turn)
    {
        TimeSpan left = turn.Set.RestingSince is { } since ? since + turn.Parts.Settings.RestBeforePressure - turn.At : TimeSpan.Zero;
        return left > TimeSpan.Zero ? left : TimeSpan.Zero;
    }

    /// <summary>Whole minutes of a rest that is not over; null where it is over, where none runs, after a stop (the pressure may have been
    /// taken before it) and in a posture test.</summary>
    public static int? Rested(Turn turn) =>
        turn.Set is { RestingSince: { } since, StoppedAt: null, Posture: PostureStep.None } && Left(turn) > TimeSpan.Zero
            ? (int)(turn.At - since).TotalMinutes
            : null;

    /// <summary>The clock has run out: it is said where nothing else is in hand.</summary>
    public static Turn Over(Turn turn) =>
        ((DialogueEvent.TimerElapsed)turn.Event).Name == TimerNames.Rest
        && !turn.State.Stage.Silent
        && turn.StillDue().Contains(VitalSign.BloodPressure)
        && turn.Set.Posture == PostureStep.None
            ? turn.Go(new Stage.Ready { Asked = 1, Led = VitalSign.BloodPressure }).Say("The rest is over. Blood pressure?")
            : turn;
}
