using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Reports;

namespace HandsFree.Core.Handover;

/// <summary>Reports as they are spoken: when a nurse must know, both readings, what is usual, who knows already.</summary>
internal static class ReportTexts
{
    /// <summary>"report now, pulse, four four, then four six, usual seven two, nurse told at 8:20".</summary>
    public static string Of(Report report, HandoverEntry entry) => $"{What(report, entry, withTimes: false)}{Known(report)}{Notes(report)}";

    /// <summary>The same with the times of the readings, and said so where nobody was told.</summary>
    public static string InDetail(Report report, HandoverEntry entry) =>
        $"{What(report, entry, withTimes: true)}{(report.State == ReportState.Open ? ", nobody told yet" : Known(report))}{Notes(report)}";

    /// <summary>Reports that a nurse has in hand: what was advised, and the plan.</summary>
    public static IEnumerable<string> Acknowledged(HandoverEntry entry) => entry.Acknowledged.Select(report =>
        $"acknowledged, {Readings(report, entry, withTimes: false)}{(report.Acknowledged!.Advised is { } advised ? $", advised: {advised}" : "")}"
        + string.Concat(report.Plans.Where(entry.Plans.Contains).Select(Plan))
        + (report.Closed is { } closed ? $", closed: {closed.Outcome}" : ""));

    /// <summary>", plan, pulse, four five to one one zero until 15:00".</summary>
    private static string Plan(PlanMade plan) => $", plan, {PlanTexts.Range(plan)} until {HandoverTexts.Moment(plan.Until, plan.At)}";

    private static string What(Report report, HandoverEntry entry, bool withTimes)
    {
        string when = report.Urgency == ReportUrgency.Now ? "report now" : "report this shift";
        return $"{when}, {Readings(report, entry, withTimes)}{(report.Sign is { } sign ? HandoverTexts.Usual(sign, entry.Resident) : "")}";
    }

    private static string Readings(Report report, HandoverEntry entry, bool withTimes)
    {
        List<string> values =
        [
            .. entry.Readings.Where(r => report.Readings.Contains(r.Id)).Select((r, i) =>
                (i == 0 ? HandoverTexts.Said(r) : $"then {ReadBackTexts.Value(r.Confirmed.Reading.Value)}")
                + (withTimes ? $" at {HandoverTexts.Time(r)}" : "")),
        ];
        return values.Count > 0 ? string.Join(", ", values)
            : report.Sign is { } sign && report.Situation.Length == 0 ? SignNames.Of(sign)
            : report.Situation;
    }

    private static string Known(Report report) => report.NurseTold is { } told ? $", nurse told at {HandoverTexts.Time(told.ToldAt)}" : "";

    private static string Notes(Report report) => string.Concat(report.Notes.Select(n => $", {n.Text}"));
}
