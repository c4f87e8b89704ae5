using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Dialogue;

/// <summary>Opens reports and says what the aide is to do.</summary>
internal static class Reporting
{
    /// <summary>Stands in a report on a value whose recheck did not happen.</summary>
    public const string RecheckNotDone = "recheck not done";

    public static string Tell(ReportUrgency urgency) =>
        urgency == ReportUrgency.Now ? "Tell the nurse before you leave." : "Tell the nurse this shift.";

    /// <summary>How soon the nurse is told; null where she is not.</summary>
    public static ReportUrgency? UrgencyOf(Outcome outcome) => outcome switch
    {
        Outcome.ReportNow => ReportUrgency.Now,
        Outcome.ReportThisShift => ReportUrgency.ThisShift,
        _ => null,
    };

    /// <summary>Opens a report on the readings that belong together; none where one as grave is open already in this round.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="sign">Which vital sign.</param>
    /// <param name="urgency">Now, or this shift.</param>
    /// <param name="decision">What the rules said.</param>
    /// <param name="note">More about the situation, or empty.</param>
    public static Recorded OpenReport(this Turn turn, VitalSign sign, ReportUrgency urgency, Decision decision, string note)
    {
        ResidentSet set = turn.Set;
        if (set.Reported.TryGetValue(sign, out ReportUrgency open) && open >= urgency)
        {
            return new Recorded(turn, Tell(open));
        }

        turn = turn.WriteReport(set.Resident.Id, urgency, sign, set.Chain(sign), decision, note);
        return new Recorded(turn.With(set with { Reported = set.Reported.SetItem(sign, urgency) }), Tell(urgency));
    }

    /// <summary>Writes a report on readings that belong together.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="resident">The resident's id.</param>
    /// <param name="urgency">Now, or this shift.</param>
    /// <param name="sign">Which vital sign.</param>
    /// <param name="readings">The readings' ids, the first and its rechecks.</param>
    /// <param name="decision">What the rules said.</param>
    /// <param name="note">More about the situation, or empty.</param>
    public static Turn WriteReport(
        this Turn turn, string resident, ReportUrgency urgency, VitalSign sign, IReadOnlyList<string> readings, Decision decision, string note)
    {
        string situation = string.Join("; ", new[] { note }.Concat(decision.Reasons.Select(r => r.Text)).Where(t => t.Length > 0));
        return turn.Write(id => new ReportOpened(
            id, turn.State.Aide, turn.At, resident, urgency, sign, readings, situation, [.. decision.Reasons.Select(r => r.Rule)]));
    }

    /// <summary>Opens a report that rests on no reading.</summary>
    public static Recorded OpenReport(this Turn turn, ReportUrgency urgency, string situation, string rule)
    {
        Turn written = turn.Write(id => new ReportOpened(
            id, turn.State.Aide, turn.At, turn.Set.Resident.Id, urgency, null, [], situation, [rule]));
        return new Recorded(written, Tell(urgency));
    }
}
