using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Pages.Drawing;
using HandsFree.Pages.Records;
using HandsFree.Pages.Texts;

namespace HandsFree.Pages.Handovers;

/// <summary>Makes the lists of what is not in order.</summary>
internal sealed class ExceptionMaking(SheetFacts facts, IReadOnlyDictionary<string, ResidentRecord> records)
{
    private const string Overdue = ", OVERDUE";
    private static readonly string[] ToldByPen = ["Nurse told", "at", "advised"];
    private static readonly string[] AcknowledgedByPen = ["Acknowledged by", "at", "advised"];
    private readonly Clock clock = new(facts.Here, facts.Since);

    public IReadOnlyList<SheetSection> Sections(IReadOnlyList<HandoverEntry> entries) =>
    [
        new(
            "Open reports",
            [.. entries.SelectMany(e => e.Reports.Select(r => (Entry: e, Report: r))).OrderByDescending(x => x.Report.Urgency).ThenBy(x => x.Report.At)
                .Select(x => Report(x.Entry, x.Report))],
            "No report is open."),
        new(
            "Rechecks that wait",
            [.. entries.SelectMany(e => e.Rechecks.Select(r => (Entry: e, Recheck: r))).OrderBy(x => x.Recheck.DueAt).Select(x => Recheck(x.Entry, x.Recheck))],
            "No recheck waits."),
        new(
            "Acknowledged, in a nurse's hand",
            [.. entries.SelectMany(e => e.Acknowledged.Select(r => (Entry: e, Report: r))).OrderBy(x => x.Report.At).Select(x => Acknowledged(x.Entry, x.Report))],
            "No report was acknowledged in this shift, and no plan stands."),
        new("Outside limits, without an open report", [.. entries.SelectMany(Outside)], "Nothing else lies outside limits."),
        new("Not taken", [.. entries.SelectMany(Missing), .. NotComplete(entries), .. NotVisited(entries)], "Everything that is due was taken."),
    ];

    /// <summary>What is not in order of one resident, the gravest first.</summary>
    public IEnumerable<Mark> Marks(HandoverEntry entry) => new[]
    {
        (entry.Reports.Any(r => r.Urgency == ReportUrgency.Now), Mark.ReportNow),
        (entry.Reports.Any(r => r.Urgency == ReportUrgency.ThisShift), Mark.ReportThisShift),
        (entry.Rechecks.Count > 0, Mark.Recheck),
        (entry.Acknowledged.Count > 0, Mark.Acknowledged),
        (entry.NotTaken.Count > 0, Mark.NotTaken),
        (entry.LeftOpen.Count > 0, Mark.LeftOpen),
        (entry.Away is not null, Mark.Away),
        (entry.IsBegun, Mark.NotComplete),
        (entry.NotVisited, Mark.NotVisited),
    }.Where(m => m.Item1).Select(m => m.Item2);

    private SheetItem Report(HandoverEntry entry, Report report) => Item(
        MarkOf(report),
        entry.Resident,
        $"since {clock.Of(report.At)}{(report.IsOverdue(facts.Overdue, facts.At) ? Overdue : "")}",
        [Readings(entry, report), report.Situation, .. Told(report), .. Notes(report)],
        report.NurseTold is null ? ToldByPen : AcknowledgedByPen);

    private SheetItem Acknowledged(HandoverEntry entry, Report report) => Item(
        Mark.Acknowledged,
        entry.Resident,
        $"since {clock.Of(report.At)}",
        [
            Readings(entry, report),
            report.Situation,
            $"Acknowledged by {report.Acknowledged!.Person} at {clock.Of(report.Acknowledged.At)}{(report.Acknowledged.Advised is { } advised ? $", advised: {advised}" : "")}",
            .. report.Plans.Where(entry.Plans.Contains).Select(Plan),
            .. Told(report),
            .. Notes(report),
            report.Closed is { } closed ? $"Closed: {closed.Outcome}" : "",
        ],
        []);

    private static Mark MarkOf(Report report) => report.Urgency == ReportUrgency.Now ? Mark.ReportNow : Mark.ReportThisShift;

    private string Readings(HandoverEntry entry, Report report)
    {
        IEnumerable<ChartedReading> readings = records[entry.Resident.Id].Signs.Values.SelectMany(s => s.Readings).Where(r => report.Readings.Contains(r.Id));
        return string.Join(", then ", readings.OrderBy(r => r.At).Select((r, i) => Reading(r, named: i == 0)));
    }

    private IEnumerable<string> Told(Report report) => report.Told.Select(told =>
        $"{told.Whom} told at {clock.Of(told.ToldAt)}{(told.Who is { } who ? $" ({who})" : "")}, {How(told.How)}");

    private static IEnumerable<string> Notes(Report report) => report.Notes.Select(n => n.Text);

    private string Plan(PlanMade plan) =>
        $"Plan: {PlanTexts.InFigures(plan)} until {clock.Of(plan.Until)}{(plan.Text.Length > 0 ? $". {plan.Text}" : "")}";

    private static string How(ToldHow how) => how switch
    {
        ToldHow.InPerson => "in person",
        ToldHow.ByPhone => "by telephone",
        ToldHow.InWriting => "in writing",
        _ => throw new ArgumentOutOfRangeException(nameof(how), how, "no such way"),
    };

    private SheetItem Recheck(HandoverEntry entry, RecheckAsked recheck)
    {
        ChartedReading? doubted = records[entry.Resident.Id].Signs[recheck.Sign].Readings.FirstOrDefault(r => r.Id == recheck.Reading);
        return Item(
            Mark.Recheck,
            entry.Resident,
            $"due {clock.Of(recheck.DueAt)}{(facts.At - recheck.DueAt > facts.Overdue.Recheck ? Overdue : "")}",
            [doubted is null ? Written.Name(recheck.Sign) : Reading(doubted, named: true), recheck.Instruction],
            [Written.ShortName(recheck.Sign), "at"]);
    }

    private IEnumerable<SheetItem> Outside(HandoverEntry entry)
    {
        foreach ((VitalSign sign, ReadingRecorded last) in entry.Last.OrderBy(l => l.Key))
        {
            SignHistory history = records[entry.Resident.Id].Signs[sign];
            int side = history.SideOf(last.Confirmed.Reading.Value);
            bool told = last.Decision.Outcome is Outcome.ReportNow or Outcome.ReportThisShift;
            bool elsewhere = entry.Reports.Concat(entry.Acknowledged).Any(r => r.Sign == sign) || entry.Rechecks.Any(r => r.Sign == sign);
            if (elsewhere || (side == 0 && !told))
            {
                continue;
            }

            string[] reasons = [.. last.Decision.Reasons.Where(r => r.Outcome == last.Decision.Outcome).Select(r => r.Text).Take(2)];
            string state = told ? "no report of it is open" : "no report was asked for";
            ChartedReading charted = history.Readings.First(r => r.Id == last.Id);
            yield return Item(
                side switch { < 0 => Mark.Low, > 0 => Mark.High, _ => Mark.Outside },
                entry.Resident,
                $"at {clock.Of(charted.At)}",
                [Reading(charted, named: true), .. reasons, state],
                []);
        }
    }

    private IEnumerable<SheetItem> Missing(HandoverEntry entry)
    {
        Resident resident = entry.Resident;
        if (entry.Away is { } away)
        {
            yield return Item(Mark.Away, resident, $"since {away.From:d MMM}", [away.Why], []);
            yield break;
        }

        foreach (NotTakenRecorded missing in entry.NotTaken)
        {
            string what = missing.Sign is { } sign ? Written.Name(sign) : "All that was open";
            yield return Item(Mark.NotTaken, resident, $"at {clock.Of(missing.At)}", [$"{what}: {facts.Wording(Written.Reason(missing.Reason))}"], []);
        }

        foreach (LeftOpen open in entry.LeftOpen)
        {
            yield return Item(Mark.LeftOpen, resident, $"at {clock.Of(open.At)}", [$"{Written.Name(open.Sign)}: not understood or not confirmed"], []);
        }
    }

    /// <summary>All of them in one item, a line each: what is still due.</summary>
    private IEnumerable<SheetItem> NotComplete(IReadOnlyList<HandoverEntry> entries)
    {
        string[] begun = [.. entries.Where(e => e.IsBegun).Select(e => $"{Who(e.Resident)}: {Written.Names(e.StillDue)}")];
        return begun.Length == 0 ? [] : [new(Mark.NotComplete, Residents(begun.Length), "", "still due", begun, [])];
    }

    private string Who(Resident resident) => facts.WithNames ? $"{Written.Place(resident)} {resident.Name}" : Written.Place(resident);

    private static string Residents(int count) => count == 1 ? "1 resident" : $"{count} residents";

    /// <summary>All of them in one item: of each there is no more to say than who it is.</summary>
    private IEnumerable<SheetItem> NotVisited(IReadOnlyList<HandoverEntry> entries)
    {
        string[] who = [.. entries.Where(e => e.NotVisited).Select(e => Who(e.Resident))];
        return who.Length == 0 ? [] : [new(Mark.NotVisited, Residents(who.Length), "", $"since {clock.Of(facts.Since)}", [string.Join(", ", who)], [])];
    }

    private string Reading(ChartedReading reading, bool named)
    {
        Core.Observations.Reading taken = reading.Reading;
        string name = named ? $"{Written.Name(taken.Value.Sign)} " : "";
        string[] how = [.. Written.How(taken.How), .. reading.IsRecheck ? ["recheck"] : Array.Empty<string>(), .. reading.Amendment is { } amendment ? [amendment] : Array.Empty<string>()];
        return $"{name}{Written.Value(taken.Value)} at {clock.Of(reading.At)}{(how.Length > 0 ? $" ({string.Join(", ", how)})" : "")}";
    }

    private SheetItem Item(Mark mark, Resident resident, string when, IEnumerable<string> lines, IReadOnlyList<string> writeIn) =>
        new(mark, Written.Place(resident), facts.WithNames ? resident.Name : "", when, [.. lines.Where(l => l.Length > 0)], writeIn);
}
