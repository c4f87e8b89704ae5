using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Figures;

namespace HandsFree.Core.Dialogue;

/// <summary>A value far from what is usual for the resident needs a second saying.</summary>
/// <remarks>What is usual only ever raises doubt. It never makes a value likelier and never takes a doubt away, for that would hide that
/// a resident gets worse (safety 14). The distances are common practice, no source.</remarks>
internal static class FarFromUsual
{
    private static readonly (LimitedValue Value, decimal Distance)[] Distances =
    [
        (LimitedValue.TemperatureFahrenheit, 3), (LimitedValue.Pulse, 30), (LimitedValue.Respirations, 8), (LimitedValue.Systolic, 40),
        (LimitedValue.Diastolic, 25), (LimitedValue.OxygenSaturation, 6), (LimitedValue.WeightPounds, 10),
    ];

    public static bool IsFarFromUsual(this Turn turn, Reading reading)
    {
        var situation = new Situation(reading, turn.Context(reading));
        return Distances.Any(d => SingleValue.Of(reading.Value, d.Value) is { } value
            && UsualValues.Of(situation, d.Value) is { } usual
            && Math.Abs(value - usual) > d.Distance);
    }
}
