using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Reports.Sheets;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Pages.Charts;
using HandsFree.Pages.Drawing;
using HandsFree.Pages.Records;
using HandsFree.Pages.Texts;

namespace HandsFree.Pages.Handovers;

/// <summary>Makes the pages of a unit out of the view and the records.</summary>
internal sealed class SheetMaking(SheetFacts facts, IReadOnlyDictionary<string, ResidentRecord> records)
{
    private readonly Clock clock = new(facts.Here, facts.Since);
    private readonly ChartMaking charts = new(facts.Units);
    private readonly ExceptionMaking exceptions = new(facts, records);

    public UnitSheet Unit(string? unit, IReadOnlyList<HandoverEntry> entries) => new(
        unit,
        Summary(entries),
        exceptions.Sections(entries),
        [.. entries.OrderBy(e => e.Resident.Room).ThenBy(e => e.Resident.Bed, StringComparer.Ordinal).Select(Block)]);

    private string Summary(IReadOnlyList<HandoverEntry> entries)
    {
        int Reports(ReportUrgency urgency) => entries.Sum(e => e.Reports.Count(r => r.Urgency == urgency));
        string[] parts =
        [
            Count(entries.Count, "resident", "residents"),
            Count(Reports(ReportUrgency.Now), "report now", "reports now"),
            Count(Reports(ReportUrgency.ThisShift), "report this shift", "reports this shift"),
            Count(entries.Sum(e => e.Rechecks.Count), "recheck waits", "rechecks wait"),
            Count(entries.Sum(e => e.Acknowledged.Count), "report acknowledged", "reports acknowledged"),
            Count(entries.Count(e => e.NotTaken.Count + e.LeftOpen.Count > 0), "with something missing", "with something missing"),
            Count(entries.Count(e => e.IsBegun), "not complete", "not complete"),
            Count(entries.Count(e => e.NotVisited), "not visited", "not visited"),
            Count(entries.Count(e => e.Away is not null), "away", "away"),
        ];
        return string.Join(" · ", parts.Where(p => p.Length > 0));
    }

    private static string Count(int count, string one, string several) => count switch { 0 => "", 1 => $"1 {one}", _ => $"{count} {several}" };

    private ResidentBlock Block(HandoverEntry entry)
    {
        ResidentRecord record = records[entry.Resident.Id];
        return new(
            Written.Place(entry.Resident),
            facts.WithNames ? entry.Resident.Name : "",
            [.. exceptions.Marks(entry)],
            Notes(entry),
            [.. UnitSheet.Columns.Select(sign => Cell(record.Signs[sign], entry))]);
    }

    private string Notes(HandoverEntry entry)
    {
        Resident resident = entry.Resident;
        DateOnly today = DateOnly.FromDateTime(facts.At.DateTime);
        List<string> notes = [];
        if (entry.Last.TryGetValue(VitalSign.Pain, out ReadingRecorded? pain))
        {
            notes.Add($"pain {Written.Value(pain.Confirmed.Reading.Value)} at {clock.Of(pain.Confirmed.By.MeasuredAt)}");
        }

        if (resident.UsualOxygen is { IsRoomAir: false } oxygen)
        {
            notes.Add($"usually on {Written.HowInShort(new() { Oxygen = oxygen })}");
        }

        notes.AddRange(entry.IsNew ? ["new here"] : []);
        notes.AddRange(resident.UsualFrozen.Where(f => today >= f.From && (f.Until is not { } last || today <= last)).Select(f => f.Why));
        notes.AddRange(resident.OrderedLimits.Where(o => o.Until is null || facts.At < o.Until).Select(o => Ordered("ordered", o)));
        notes.AddRange(entry.Plans.Select(p => Ordered("plan", p.ToLimit())));
        return string.Join("; ", notes);
    }

    private string Ordered(string by, OrderedLimit order)
    {
        string Number(decimal number) => Written.Number(facts.Units.Written(order.Value, number));
        string range = (order.Least, order.Greatest) switch
        {
            ({ } least, { } greatest) => $"{Number(least)}–{Number(greatest)}",
            ({ } least, null) => $"at least {Number(least)}",
            (null, { } greatest) => $"at most {Number(greatest)}",
            _ => "",
        };
        string until = order.Until is { } end ? $" until {clock.Of(end)}" : "";
        return $"{by}: {RosterWords.Of(RosterWords.Values, order.Value)} {range}{until}";
    }

    private SignCell Cell(SignHistory history, HandoverEntry entry)
    {
        Chart trend = charts.Of(history, facts.At - HandoverSheet.TrendLength, facts.At);
        if (history.Last is not { } last)
        {
            return new(history.Sign, null, "none", "", Usual(history), null, IsOld: true, trend);
        }

        Quantity value = last.Reading.Value;
        bool columnUnit = Written.Unit(value) == Written.Unit(history.Sign, facts.Units);
        Mark? mark = history.SideOf(value) switch { > 0 => Mark.High, < 0 => Mark.Low, _ => null };
        bool old = !entry.Last.ContainsKey(history.Sign);
        string late = last.IsLate ? "~" : "";
        return new(
            history.Sign,
            columnUnit ? Written.Number(value) : Written.Value(value),
            late + clock.InShort(last.At, facts.At),
            Written.HowInShort(last.Reading.How),
            Usual(history),
            mark,
            old,
            trend);
    }

    /// <summary>The usual range in the home's unit: "97.2–98.4", of a pressure "120–148/64–80".</summary>
    private string? Usual(SignHistory history)
    {
        string?[] ranges = [.. WrittenReading.ValuesOf(history.Sign).Select(value => history.Usual.TryGetValue(value, out UsualRange? usual) ? Range(value, usual) : null)];
        return ranges.Any(r => r is null) ? null : string.Join('/', ranges);
    }

    private string Range(LimitedValue value, UsualRange usual)
    {
        string Number(decimal number) => Written.Number(Written.UsualNumber(value, facts.Units.Written(value, number)));
        return usual is { Low: { } low, High: { } high } && Number(low) != Number(high) ? $"{Number(low)}–{Number(high)}" : Number(usual.Median);
    }
}
