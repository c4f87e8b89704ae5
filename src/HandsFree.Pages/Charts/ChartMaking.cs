using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports.Sheets;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Figures;
using HandsFree.Core.Rules.Limits;
using HandsFree.Pages.Records;
using HandsFree.Pages.Texts;

namespace HandsFree.Pages.Charts;

/// <summary>Makes the chart of a sign from its history, in the home's units.</summary>
/// <param name="units">The home's.</param>
internal sealed class ChartMaking(RosterUnits units)
{
    /// <summary>The chart of the readings after a moment; it ends now, or with a reading that is later by this device's clock.</summary>
    public Chart Of(SignHistory history, DateTimeOffset from, DateTimeOffset now)
    {
        IReadOnlyList<LimitedValue> numbers = WrittenReading.ValuesOf(history.Sign);
        LimitedValue upper = numbers[0];
        LimitedValue? lower = numbers.Count > 1 ? numbers[1] : null;
        List<ChartedReading> shown = [.. history.Readings.Where(r => r.At > from)];
        DateTimeOffset until = shown.Count > 0 && shown[^1].At > now ? shown[^1].At : now;
        Dictionary<string, Quantity> values = shown.DistinctBy(r => r.Id).ToDictionary(r => r.Id, r => r.Reading.Value);
        ReportLimits limits = history.Limits[upper];
        ReportLimits lowerLimits = lower is { } second ? history.Limits[second] : ReportLimits.None;
        UsualRange? usual = history.Usual.GetValueOrDefault(upper);
        double Shown(LimitedValue value, decimal number) => (double)units.Written(value, number);
        double Usual(LimitedValue value, decimal number) => (double)Written.UsualNumber(value, units.Written(value, number));
        double? Line(LimitedValue value, ReportLimit? limit) => limit is null ? null : Shown(value, limit.Number);
        double Number(Quantity quantity, LimitedValue value) => Shown(value, SingleValue.Of(quantity, value)!.Value);
        return new Chart(
            from,
            until,
            [
                .. shown.Select((r, i) => new ChartPoint(
                    r.At,
                    Number(values[r.Id], upper),
                    lower is { } low ? Number(values[r.Id], low) : null,
                    !r.Stands ? PointKind.CountsNoMore : r.IsRecheck ? PointKind.Recheck : PointKind.Taken,
                    history.SideOf(values[r.Id]),
                    Letters(r, shown.Take(i).LastOrDefault(before => before.Stands)))
                {
                    CorrectedTo = r.ReplacedBy is { } by && values.TryGetValue(by, out Quantity? right) ? Number(right, upper) : null,
                }),
            ],
            Line(upper, limits.Low),
            Line(upper, limits.High),
            usual is null ? null : Usual(upper, usual.Low ?? usual.Median),
            usual is null ? null : Usual(upper, usual.High ?? usual.Median))
        {
            LowerLow = lower is { } l ? Line(l, lowerLimits.Low) : null,
            LowerHigh = lower is { } h ? Line(h, lowerLimits.High) : null,
        };
    }

    /// <summary>"other system" for the first of those that another system recorded; "L" for a late entry, "G" for what was said as a guess first; the way it was taken where it is another than before.</summary>
    private static string? Letters(ChartedReading reading, ChartedReading? before)
    {
        Circumstances how = reading.Reading.How;
        string now = Written.HowInShort(how);
        string changed = before is not null && now.Length > 0 && now != Written.HowInShort(before.Reading.How) ? now : "";
        string letters = string.Join(' ', new[] { reading.Event is null && (before is null || before.Event is not null) ? "other system" : "", reading.IsLate ? "L" : "", how.SaidAsGuessFirst ? "G" : "", changed }.Where(l => l.Length > 0));
        return letters.Length > 0 ? letters : null;
    }
}
