using HandsFree.Core.Quantities;
using HandsFree.Core.Reports.Sheets;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Figures;
using HandsFree.Core.Rules.Limits;

namespace HandsFree.Pages.Records;

/// <summary>The readings of one vital sign of one resident, with what they are held against.</summary>
/// <param name="Sign">Which.</param>
/// <param name="Readings">By the time of measurement, oldest first; also those that count no more.</param>
/// <param name="Limits">The lines beyond which a nurse is told, for each number of the sign.</param>
/// <param name="Usual">What is usual, for each number of the sign of which it is known.</param>
public sealed record SignHistory(
    VitalSign Sign,
    IReadOnlyList<ChartedReading> Readings,
    IReadOnlyDictionary<LimitedValue, ReportLimits> Limits,
    IReadOnlyDictionary<LimitedValue, UsualRange> Usual)
{
    /// <summary>The last reading of this record that stands; null where there is none. What another system recorded is none.</summary>
    public ChartedReading? Last => Readings.LastOrDefault(r => r.Stands && r.Event is not null);

    /// <summary>1 where a number of the quantity lies above its upper limit, -1 where one lies below its lower, 0 else.</summary>
    public int SideOf(Quantity quantity) =>
        WrittenReading.ValuesOf(Sign).Select(value => Limits[value].SideOf(SingleValue.Of(quantity, value)!.Value)).FirstOrDefault(side => side != 0);
}
