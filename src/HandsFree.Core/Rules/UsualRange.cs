using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules.Figures;

namespace HandsFree.Core.Rules;

/// <summary>What is usual for a resident, as the rules see it.</summary>
/// <param name="Median">The roster's value, else the median of the last readings that count; in the unit of the limited value.</param>
/// <param name="Spread">The usual distance from it, scaled to a standard deviation; null with fewer than five readings.</param>
public sealed record UsualRange(decimal Median, decimal? Spread)
{
    /// <summary>Two spreads below the median: about one reading in forty lies lower.</summary>
    public decimal? Low => Median - (2 * Spread);

    /// <summary>Two spreads above the median: about one reading in forty lies higher.</summary>
    public decimal? High => Median + (2 * Spread);

    /// <summary>What is usual, or null where nothing is known.</summary>
    /// <param name="value">Of which number.</param>
    /// <param name="like">A reading of that sign: a temperature is compared with those of the same site.</param>
    /// <param name="context">Resident, earlier readings and the moment.</param>
    public static UsualRange? Of(LimitedValue value, Reading like, DecisionContext context)
    {
        Situation situation = new(like, context);
        return UsualValues.Of(situation, value) is { } median ? new(median, UsualValues.Spread(situation, value)) : null;
    }
}
