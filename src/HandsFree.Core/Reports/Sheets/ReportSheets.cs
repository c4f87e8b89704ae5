using System.Globalization;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Reports.Sheets;

/// <summary>Makes the sheet of a report from the record.</summary>
/// <param name="journal">The events that matter, oldest first.</param>
/// <param name="roster">The residents.</param>
/// <param name="clock">The home's time zone.</param>
/// <param name="overdue">After what time a report is overdue.</param>
public sealed class ReportSheets(IReadOnlyList<JournalEvent> journal, Roster roster, ShiftClock clock, Overdue overdue)
{
    private const string LeftForTheNurse = "Left for the nurse.";

    /// <summary>The sheet.</summary>
    /// <param name="report">The report.</param>
    /// <param name="now">The present moment.</param>
    public ReportSheet Of(Report report, DateTimeOffset now)
    {
        Resident? resident = roster.ById(report.Resident);
        string place = resident is null ? $"Resident {report.Resident}, no longer on the roster" : HandoverTexts.Place(resident);
        List<ReadingRecorded> own = [.. journal.OfType<ReadingRecorded>().Where(r => report.Readings.Contains(r.Id))];
        List<ReadingRecorded> together = [.. Together(report, own)];
        string what = report.Sign is { } sign ? SignNames.Of(sign) : report.Situation;
        return new ReportSheet(
            report,
            place,
            $"{(report.Urgency == ReportUrgency.Now ? "Report now" : "Report this shift")}: {what}",
            [.. own.Concat(together.Where(Speaks)).OrderBy(r => r.Confirmed.By.MeasuredAt).Select(r => Taken(r, report)), .. Reasons(report, own)],
            [.. Background(report, resident, own, together)],
            LeftForTheNurse,
            [.. Recommendation(report)],
            [.. Course(report, now)]);
    }

    /// <summary>Readings of other signs that were taken within the hour of the report's. Of which the rules say something, those belong to
    /// the situation, the others to its background.</summary>
    private IEnumerable<ReadingRecorded> Together(Report report, List<ReadingRecorded> own)
    {
        DateTimeOffset from = (own.Count > 0 ? own.Min(r => r.Confirmed.By.MeasuredAt) : report.At) - RecheckChains.OneSet;
        DateTimeOffset to = (own.Count > 0 ? own.Max(r => r.Confirmed.By.MeasuredAt) : report.At) + RecheckChains.OneSet;
        return PastReadings.Standing(journal).Where(r => r.Resident == report.Resident && !report.Readings.Contains(r.Id)
            && r.Confirmed.By.MeasuredAt >= from && r.Confirmed.By.MeasuredAt <= to);
    }

    private string Taken(ReadingRecorded reading, Report report)
    {
        bool amended = journal.Any(e => (e is EnteredInError error && error.Event == reading.Id) || (e is ReadingRecorded next && next.Amends == reading.Id));
        string how = (reading.IsRecheck ? ", recheck" : "") + (reading.Confirmed.By.Late ? ", late entry" : "") + (amended ? ", amended since" : "");
        return $"{When(reading.Confirmed.By.MeasuredAt, report)} {WrittenReading.Of(reading.Confirmed.Reading)}{how}, by {reading.Confirmed.By.Person}";
    }

    // What decided, then what else was noted when the report was opened: a symptom, a recheck that was not done.
    private static IEnumerable<string> Reasons(Report report, List<ReadingRecorded> own)
    {
        HashSet<string> known = [.. own.SelectMany(r => r.Decision.Reasons).Select(r => r.Text)];
        return Spoke(own).Select(r => r.Text).Concat(report.Situation.Split("; ").Where(part => part.Length > 0 && !known.Contains(part))).Distinct();
    }

    private IEnumerable<string> Background(Report report, Resident? resident, List<ReadingRecorded> own, List<ReadingRecorded> together)
    {
        VitalSign[] signs = [.. own.Concat(together).Select(r => r.Confirmed.Reading.Value.Sign).Distinct().Order()];
        LimitedValue[] values = [.. signs.SelectMany(WrittenReading.ValuesOf)];
        string usual = Sentence.List([.. (resident?.UsualValues ?? []).Where(u => values.Contains(u.Value)).Select(WrittenReading.Usual)]);
        yield return usual.Length > 0 ? usual : "no usual values are noted";
        foreach (string limit in Limits(report, resident, own))
        {
            yield return limit;
        }

        foreach (string recheck in Rechecks(report))
        {
            yield return recheck;
        }

        if (signs.Contains(VitalSign.OxygenSaturation) || resident?.UsualOxygen is not null)
        {
            yield return $"usual or ordered oxygen: {(resident?.UsualOxygen is { } supply ? WrittenReading.Oxygen(supply) : "none is noted")}";
        }

        foreach (ReadingRecorded reading in together.Where(r => !Speaks(r)))
        {
            yield return $"taken with it: {Taken(reading, report)}";
        }

        foreach (string note in resident is null ? [] : Notes(resident))
        {
            yield return note;
        }

        foreach (Reason reason in Spoke(own).DistinctBy(r => r.Rule))
        {
            yield return $"rule {reason.Rule}: {reason.Source} ({Mark(reason.Mark)})";
        }

        foreach (ReportNoted noted in report.Notes)
        {
            yield return $"{When(noted.At, report)} {noted.Text}";
        }
    }

    // In force when it was opened: plans and orders with whose they are; where there are none, that the home's and the default rules decide.
    private IEnumerable<string> Limits(Report report, Resident? resident, List<ReadingRecorded> own)
    {
        VitalSign[] signs = report.Sign is { } sign ? [sign] : [.. own.Select(r => r.Confirmed.Reading.Value.Sign).Distinct()];
        LimitedValue[] values = [.. signs.SelectMany(WrittenReading.ValuesOf)];
        List<PlanMade> plans = [.. Plans.Standing(journal, report.Resident, report.At).Where(p => values.Contains(p.Value))];
        OrderedLimit[] orders = [.. (resident?.OrderedLimits ?? []).Where(o => values.Contains(o.Value) && (o.Until is not { } end || report.At < end))];
        foreach (PlanMade plan in plans)
        {
            yield return $"limit of a plan: {PlanTexts.InFigures(plan)}, {plan.Person}, until {When(plan.Until, report)}";
        }

        foreach (OrderedLimit order in orders)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"ordered limit: {PlanTexts.InFigures(order)}, {order.OrderedBy}, {order.OrderedOn:yyyy-MM-dd}");
        }

        if (plans.Count + orders.Length == 0 && signs.Length > 0)
        {
            yield return "no limit is ordered for it; the home's and the default limits decide";
        }
    }

    private IEnumerable<string> Rechecks(Report report) => journal.OfType<RecheckAsked>().Where(r => report.Readings.Contains(r.Reading)).Select(asked =>
    {
        ReadingRecorded? done = PastReadings.Standing(journal).FirstOrDefault(r =>
            r.Resident == asked.Resident && r.IsRecheck && r.Confirmed.Reading.Value.Sign == asked.Sign && r.At >= asked.At);
        return $"recheck asked {When(asked.At, report)}: {asked.Instruction} {(done is null ? "Not done." : $"Done {When(done.Confirmed.By.MeasuredAt, report)}.")}";
    });

    private static IEnumerable<string> Notes(Resident resident) =>
    [
        .. resident.ArmsNotToBeUsed.OrderBy(a => a.Key).Select(a => $"{(a.Key == Observations.Arm.Left ? "left" : "right")} arm not to be used: {a.Value}"),
        .. resident.Devices, .. resident.Conditions,
    ];

    private IEnumerable<string> Recommendation(Report report)
    {
        if (report.Acknowledged is not { } acknowledged)
        {
            yield return LeftForTheNurse;
            yield break;
        }

        yield return acknowledged.Advised is { } advised ? $"Advised by {acknowledged.Person}, read back: {advised}" : $"{acknowledged.Person} advised nothing.";
        foreach (PlanMade plan in report.Plans)
        {
            yield return $"Plan of {plan.Person} until {When(plan.Until, report)}: {PlanTexts.InFigures(plan)}; what is worse is reported{(plan.Text.Length > 0 ? $". {plan.Text}" : "")}";
        }
    }

    private IEnumerable<string> Course(Report report, DateTimeOffset now)
    {
        IEnumerable<(DateTimeOffset At, string Text)> happened =
        [
            (report.At, $"opened by {report.Opened.Person}"),
            .. report.Told.Select(t => (t.ToldAt, $"{ReportMoves.Name(t.Whom)} told{(t.Who is { } who ? $" ({who})" : "")} {How(t.How)}, by {t.Person}")),
            .. report.Acknowledged is { } a ? [(a.At, $"acknowledged by {a.Person}")] : Array.Empty<(DateTimeOffset, string)>(),
            .. report.Plans.Select(p => (p.At, $"plan by {p.Person}")),
            .. report.Closed is { } c ? [(c.At, $"closed by {c.Person}: {c.Outcome}")] : Array.Empty<(DateTimeOffset, string)>(),
        ];
        foreach (var (at, text) in happened.OrderBy(h => h.At))
        {
            yield return $"{When(at, report)} {text}";
        }

        if (report.IsOverdue(overdue, now))
        {
            yield return $"overdue since {When(report.At + overdue.Of(report.Urgency), report)}: no nurse has acknowledged it";
        }
    }

    private string When(DateTimeOffset at, Report report) =>
        clock.Here(at).ToString(clock.Here(at).Date == clock.Here(report.At).Date ? "HH:mm" : "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static bool Speaks(ReadingRecorded reading) => reading.Decision.Outcome != Outcome.Accept;

    private static IEnumerable<Reason> Spoke(List<ReadingRecorded> own) =>
        own.Where(Speaks).SelectMany(r => r.Decision.Reasons.Where(reason => reason.Outcome == r.Decision.Outcome));

    private static string How(ToldHow how) => how switch
    {
        ToldHow.InPerson => "in person",
        ToldHow.ByPhone => "by telephone",
        ToldHow.InWriting => "in writing",
        _ => throw new ArgumentOutOfRangeException(nameof(how), how, "no such way"),
    };

    private static string Mark(RuleMark mark) => mark switch
    {
        RuleMark.Published => "read in the source",
        RuleMark.FromMemory => "from memory, to be verified",
        RuleMark.CommonPractice => "common practice, no source",
        _ => throw new ArgumentOutOfRangeException(nameof(mark), mark, "no such mark"),
    };
}
