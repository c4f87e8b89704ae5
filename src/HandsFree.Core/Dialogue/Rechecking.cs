using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Dialogue;

/// <summary>The time for which a recheck was asked, a rest mostly, is kept: what is measured before it is taken as too early and does not
/// settle the recheck.</summary>
internal static class Rechecking
{
    /// <summary>Whether a recheck of the sign waits whose time has not come. In a posture test the order says when it is measured.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="sign">Which vital sign.</param>
    /// <param name="measured">When it was measured.</param>
    public static bool IsTooEarly(Turn turn, VitalSign sign, DateTimeOffset measured) =>
        turn.Set is { Posture: PostureStep.None } set && set.Waiting.Any(w => w.Sign == sign && measured < w.DueAt);

    /// <summary>A reading before its time was recorded: the recheck stays, with the graver of the two decisions. What must be told now is
    /// told now.</summary>
    public static Recorded TakenTooEarly(Turn turn, ReadingRecorded reading, Decision decision)
    {
        VitalSign sign = reading.Confirmed.Reading.Value.Sign;
        WaitingRecheck? waiting = turn.Set.Waiting.FirstOrDefault(w => w.Sign == sign);
        Turn kept = waiting is not null && decision.Outcome > waiting.Decision.Outcome
            ? turn.With(turn.Set with { Waiting = turn.Set.Waiting.Replace(waiting, waiting with { Decision = decision }) })
            : turn;
        Recorded told = decision.Outcome == Outcome.ReportNow || decision.Danger
            ? kept.OpenReport(sign, ReportUrgency.Now, decision, "")
            : new Recorded(kept, "");
        return waiting is null ? told : told with { Text = Sentence.Join(told.Text, Still(waiting, turn.At)) };
    }

    private static string Still(WaitingRecheck waiting, DateTimeOffset at) =>
        $"{SignNames.Capital(waiting.Sign)} again in {WaitingTime.Words(waiting.DueAt - at)}.";
}
