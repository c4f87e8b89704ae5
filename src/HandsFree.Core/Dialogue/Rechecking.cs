using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Dialogue;

/// <summary>The time for which a recheck was asked, a rest mostly, is kept: what is measured before it is taken as too early and does not
/// settle the recheck.</summary>
internal static class Rechecking
{
    // What is due again hours later may be taken an eighth earlier, half an hour of four (proposal, to be approved by the home).
    private const int Grace = 8;

    /// <summary>Whether a recheck of the sign waits whose time has not come. In a posture test the order says when it is measured.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="sign">Which vital sign.</param>
    /// <param name="measured">When it was measured.</param>
    public static bool IsTooEarly(Turn turn, VitalSign sign, DateTimeOffset measured) =>
        turn.Set is { Posture: PostureStep.None } set && set.Waiting.Any(w => w.Sign == sign && measured < w.DueAt - GraceOf(w));

    /// <summary>A reading before its time was recorded: the recheck stays. What is graver than the doubt for which it waits is told without
    /// it.</summary>
    public static Recorded TakenTooEarly(Turn turn, ReadingRecorded reading, Decision decision)
    {
        VitalSign sign = reading.Confirmed.Reading.Value.Sign;
        WaitingRecheck? waiting = turn.Set.Waiting.FirstOrDefault(w => w.Sign == sign);
        bool graver = waiting is null || decision.Outcome > waiting.Decision.Outcome || decision.Danger;
        Recorded told = graver && Reporting.UrgencyOf(decision.Outcome) is { } urgency
            ? turn.OpenReport(sign, urgency, decision, "")
            : new Recorded(turn, "");
        return waiting is null ? told : told with { Text = Sentence.Join(told.Text, Still(waiting, turn.At)) };
    }

    private static TimeSpan GraceOf(WaitingRecheck waiting) =>
        waiting.Decision.Recheck is { } recheck && recheck.After >= RecheckChains.OneSet ? recheck.After / Grace : TimeSpan.Zero;

    private static string Still(WaitingRecheck waiting, DateTimeOffset at) =>
        $"{SignNames.Capital(waiting.Sign)} again in {WaitingTime.Words(waiting.DueAt - at)}.";
}
