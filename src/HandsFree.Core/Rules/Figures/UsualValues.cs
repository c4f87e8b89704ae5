using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Rules.Figures;

/// <summary>What is usual for the resident: the roster's value where it has one, else the median of the last readings, of which at
/// least five are needed. Readings taken while a report was open, or while an antibiotic or a plan was noted, do not count.</summary>
internal static class UsualValues
{
    private const int Fewest = 5;
    private const int Most = 15;

    /// <summary>The usual value in the unit of <see cref="LimitedValue"/>, or null where nothing is known.</summary>
    public static decimal? Of(Situation situation, LimitedValue value) =>
        FromRoster(situation, value) ?? (Recent(situation, value) is { Count: >= Fewest } recent ? Median(recent) : null);

    /// <summary>The usual distance of a reading from the median, scaled to a standard deviation (1.4826 × the median absolute
    /// deviation); null with fewer than five readings.</summary>
    public static decimal? Spread(Situation situation, LimitedValue value)
    {
        var recent = Recent(situation, value);
        if (recent.Count < Fewest)
        {
            return null;
        }

        decimal median = Median(recent);
        return 1.4826m * Median([.. recent.Select(r => Math.Abs(r - median)).Order()]);
    }

    /// <summary>The usual temperature in the unit that was spoken.</summary>
    public static decimal? Temperature(Situation situation, TemperatureUnit unit) =>
        Of(situation, LimitedValue.TemperatureFahrenheit) is { } usual
            ? unit == TemperatureUnit.Celsius ? (usual - 32) * 5 / 9 : usual
            : null;

    private static decimal? FromRoster(Situation situation, LimitedValue value)
    {
        var known = situation.Context.Resident.UsualValues.Where(u => u.Value == value).ToList();
        var match = known.Find(u => u.Site is not null && u.Site == situation.How.Site) ?? known.Find(u => u.Site is null);
        return match?.Median;
    }

    private static List<decimal> Recent(Situation situation, LimitedValue value) =>
    [
        .. situation.Context.Earlier
            .Where(p => situation.Context.At - p.MeasuredAt >= Situation.SameSet)
            .Where(p => p.CountsAsUsual && !situation.Context.Resident.UsualIsFrozen(p.MeasuredAt))
            .Where(p => value != LimitedValue.TemperatureFahrenheit || p.Reading.How.Site == situation.How.Site)
            .Select(p => SingleValue.Of(p.Reading.Value, value))
            .OfType<decimal>()
            .TakeLast(Most)
            .Order(),
    ];

    private static decimal Median(List<decimal> ordered) => ordered.Count % 2 == 1
        ? ordered[ordered.Count / 2]
        : (ordered[ordered.Count / 2 - 1] + ordered[ordered.Count / 2]) / 2;
}
