using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Rules.Figures;

/// <summary>The pressure before standing up, for a reading that was taken standing.</summary>
internal static class Posture
{
    /// <summary>How long before the standing reading the one to compare with may have been taken (common practice, no source).</summary>
    private static readonly TimeSpan Window = TimeSpan.FromMinutes(15);

    /// <summary>The latest earlier pressure in that position, or null where this one was not taken standing or there is none.</summary>
    public static BloodPressure? Before(Situation situation, BodyPosition position) =>
        situation.How.Position != BodyPosition.Standing
            ? null
            : situation.Past(VitalSign.BloodPressure).LastOrDefault(p =>
                p.Reading.How.Position == position && situation.Context.At - p.MeasuredAt <= Window)?.Reading.Value as BloodPressure;

    /// <summary>The fall of one side of the pressure since that position; negative for a rise.</summary>
    public static Amount? Fall(Situation situation, BodyPosition from, Func<BloodPressure, int> side) =>
        situation.Value<BloodPressure>() is { } now && Before(situation, from) is { } before
            ? new Amount(side(before) - side(now))
            : null;
}
