using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Reports.Sheets;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Limits;
using HandsFree.Pages.Charts;
using HandsFree.Pages.Drawing;
using HandsFree.Pages.Handovers;
using HandsFree.Pages.Records;
using HandsFree.Pages.Texts;

namespace HandsFree.Pages.Trends;

/// <summary>Makes the trend sheet of a resident.</summary>
internal sealed class TrendMaking(SheetFacts facts)
{
    private readonly ChartMaking charts = new(facts.Units);
    private readonly Clock clock = new(facts.Here, DateTimeOffset.MaxValue);

    public TrendSheet Of(ResidentRecord record, IReadOnlyList<JournalEvent> journal)
    {
        Resident resident = record.Resident;
        string?[] who =
        [
            Written.Place(resident), resident.Unit, facts.WithNames ? resident.Name : null,
            facts.WithNames && resident.Room > 0 ? $"born {resident.Born:d MMM yyyy}" : null,
        ];
        return new(
            facts,
            string.Join(" · ", who.OfType<string>()),
            [.. Notes(resident, Plans.Standing(journal, resident.Id, facts.At))],
            [.. UnitSheet.Columns.Select(sign => Chart(record.Signs[sign]))],
            Rows(record));
    }

    private TrendChart Chart(SignHistory history)
    {
        string limits = string.Join("; ", WrittenReading.ValuesOf(history.Sign)
            .SelectMany(value => new[] { (history.Limits[value].Low, "below", value), (history.Limits[value].High, "above", value) })
            .Where(side => side.Item1 is not null).Select(side => Limit(side.Item1!, side.Item2, side.value, history)));
        string heading = $"{Written.Name(history.Sign)}, {Written.Unit(history.Sign, facts.Units)}";
        return new(history.Sign, limits.Length > 0 ? $"{heading}. Limits: {limits}" : heading, charts.Of(history, facts.Since, facts.At));
    }

    private string Limit(ReportLimit limit, string side, LimitedValue value, SignHistory history)
    {
        string of = history.Sign == VitalSign.BloodPressure ? RosterWords.Of(RosterWords.Values, value) + " " : "";
        string or = limit.IsBeyond ? "from " : "";
        string by = limit.Authority switch { RuleAuthority.Ordered => $" (ordered by {limit.OrderedBy})", RuleAuthority.Home => " (the home)", _ => " (default)" };
        return $"{of}{or}{(limit.IsBeyond ? (side == "above" ? "" : "down from ") : side + " ")}{Written.Number(facts.Units.Written(value, limit.Number))}{by}";
    }

    private IEnumerable<string> Notes(Resident resident, IReadOnlyList<PlanMade> plans)
    {
        foreach (OrderedLimit order in resident.OrderedLimits.Where(o => o.Until is null || facts.At < o.Until))
        {
            yield return $"Ordered by {order.OrderedBy} on {order.OrderedOn:d MMM yyyy}: {PlanTexts.InFigures(order)}{(order.Until is { } until ? $" until {clock.Of(until)}" : "")}.";
        }

        foreach (PlanMade plan in plans)
        {
            yield return $"Plan of {plan.Person}: {PlanTexts.InFigures(plan)} until {clock.Of(plan.Until)}. {plan.Text}".TrimEnd();
        }

        if (resident.UsualOxygen is { IsRoomAir: false } oxygen)
        {
            yield return $"Usually on {Written.HowInShort(new Circumstances { Oxygen = oxygen })}.";
        }

        foreach (UsualFreeze freeze in resident.UsualFrozen)
        {
            yield return $"Readings do not count as usual: {freeze.Why} from {freeze.From:d MMM yyyy}{(freeze.Until is { } last ? $" to {last:d MMM yyyy}" : "")}.";
        }

        foreach ((Arm arm, string why) in resident.ArmsNotToBeUsed.OrderBy(a => a.Key))
        {
            yield return $"No pressure on the {(arm == Arm.Left ? "left" : "right")} arm: {why}.";
        }

        if (resident.Devices.Count > 0)
        {
            yield return $"Devices: {string.Join(", ", resident.Devices)}.";
        }
    }

    /// <summary>A row begins with a reading that is an hour or more after the first of the row before.</summary>
    private List<TrendRow> Rows(ResidentRecord record)
    {
        List<List<ChartedReading>> sets = [];
        foreach (ChartedReading reading in record.Signs.Values.SelectMany(s => s.Readings).Where(r => r.At > facts.Since).OrderBy(r => r.At))
        {
            if (sets.Count == 0 || reading.At - sets[^1][0].At >= RecheckChains.OneSet)
            {
                sets.Add([]);
            }

            sets[^1].Add(reading);
        }

        sets.Reverse();
        return [.. sets.Select(set => new TrendRow(
            clock.Of(set[0].At),
            string.Join(", ", set.Select(r => r.By).Distinct()),
            set.GroupBy(r => r.Reading.Value.Sign)
                .ToDictionary(g => g.Key, g => (IReadOnlyList<TrendCell>)[.. g.Select(r => Cell(r, record.Signs[g.Key]))])))];
    }

    private TrendCell Cell(ChartedReading reading, SignHistory history)
    {
        Reading taken = reading.Reading;
        bool columnUnit = Written.Unit(taken.Value) == Written.Unit(history.Sign, facts.Units);
        string[] details =
        [
            .. Written.How(taken.How),
            .. reading.IsRecheck ? ["recheck"] : Array.Empty<string>(),
            .. reading.IsLate ? [$"late entry of {clock.Of(reading.Event!.At)}"] : Array.Empty<string>(),
            .. reading.Event is null ? ["recorded by another system"] : Array.Empty<string>(),
            .. reading.Was is { } was && was.Confirmed.Reading.Value != taken.Value ? [$"before: {Written.Number(was.Confirmed.Reading.Value)}"] : Array.Empty<string>(),
            .. reading.Amendment is { } amendment ? [amendment] : Array.Empty<string>(),
        ];
        Mark? mark = history.SideOf(taken.Value) switch { > 0 => Mark.High, < 0 => Mark.Low, _ => null };
        return new(columnUnit ? Written.Number(taken.Value) : Written.Value(taken.Value), mark, details, !reading.Stands);
    }
}
