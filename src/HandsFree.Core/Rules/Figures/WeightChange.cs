using HandsFree.Core.Quantities;

namespace HandsFree.Core.Rules.Figures;

/// <summary>How the weight moved since earlier weights.</summary>
internal static class WeightChange
{
    /// <summary>Pounds since the last weight, without sign.</summary>
    public static Amount? SinceLast(Situation situation) =>
        Last(situation) is { } last ? new Amount(Math.Abs(Now(situation) - last)) : null;

    /// <summary>Percent of the last weight, without sign.</summary>
    public static Amount? ShareSinceLast(Situation situation) =>
        Last(situation) is { } last and > 0 ? new Amount(Math.Abs(Now(situation) - last) / last * 100) : null;

    /// <summary>The loss in percent since the weight nearest to so many days ago and not further back: the oldest in the window
    /// (the assessment of weight loss compares with the weight closest to that day).</summary>
    public static Amount? Loss(Situation situation, int days) =>
        OldestWithin(situation, days) is { } then and > 0 ? new Amount((then - Now(situation)) / then * 100) : null;

    /// <summary>The gain in pounds over the least weight within so many days.</summary>
    public static Amount? Gain(Situation situation, int days)
    {
        var window = Within(situation, days);
        return window.Count > 0 ? new Amount(Now(situation) - window.Min()) : null;
    }

    private static decimal Now(Situation situation) => situation.Value<BodyWeight>()!.Pounds;

    private static decimal? Last(Situation situation) => situation.Value<BodyWeight>() is null
        ? null
        : (situation.Past(VitalSign.Weight).LastOrDefault(p => situation.Context.At - p.MeasuredAt >= Situation.SameSet)?.Reading.Value as BodyWeight)?.Pounds;

    private static decimal? OldestWithin(Situation situation, int days) => Within(situation, days) is [var first, ..] ? first : null;

    private static List<decimal> Within(Situation situation, int days) => situation.Value<BodyWeight>() is null
        ? []
        :
        [
            .. situation.Past(VitalSign.Weight)
                .Where(p => situation.Context.At - p.MeasuredAt >= Situation.SameSet
                    && situation.Context.At.Date - p.MeasuredAt.Date <= TimeSpan.FromDays(days))
                .Select(p => ((BodyWeight)p.Reading.Value).Pounds),
        ];
}
