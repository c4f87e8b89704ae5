using HandsFree.Core.Quantities;

namespace HandsFree.Core.Rules.Figures;

/// <summary>Whether a count of so many seconds can have given the value (arithmetic: rate = count × 60 / seconds).</summary>
internal static class CountCheck
{
    /// <summary>What is left when the value is divided by the step of its count: 4 for 15 seconds, 2 for 30, 1 for 60.</summary>
    public static Amount? Remainder(Situation situation) =>
        Rate(situation) is { } rate && situation.How.CountedSeconds is { } seconds and > 0
            ? new Amount(rate * seconds % 60 == 0 ? 0 : rate % (60m / seconds))
            : null;

    /// <summary>The distance of the value from what the count makes.</summary>
    public static Amount? Difference(Situation situation) =>
        Rate(situation) is { } rate && situation.How is { Counted: { } counted, CountedSeconds: { } seconds and > 0 }
            ? new Amount(Math.Abs(rate - counted * 60m / seconds))
            : null;

    private static int? Rate(Situation situation) => situation.Reading.Value switch
    {
        HeartRate pulse => pulse.PerMinute,
        RespiratoryRate breaths => breaths.PerMinute,
        _ => null,
    };
}
