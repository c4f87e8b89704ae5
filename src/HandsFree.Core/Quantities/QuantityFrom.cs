using HandsFree.Core.Meanings;

namespace HandsFree.Core.Quantities;

/// <summary>Makes a quantity of a number that was said. A number outside what can be represented is a value, no exception.</summary>
public static class QuantityFrom
{
    /// <summary>The quantity, or null where the number can't be one of this sign.</summary>
    /// <param name="sign">Which vital sign.</param>
    /// <param name="number">What was said.</param>
    /// <param name="unit">"F", "C", "lb" or "kg" where it was said; a temperature's unit is else inferred from its range.</param>
    public static Quantity? Number(VitalSign sign, SpokenNumber number, string? unit) => sign switch
    {
        VitalSign.Pulse => Whole(number, HeartRate.Greatest) is { } n ? HeartRate.FromPerMinute(n) : null,
        VitalSign.Respirations => Whole(number, RespiratoryRate.Greatest) is { } n ? RespiratoryRate.FromPerMinute(n) : null,
        VitalSign.OxygenSaturation => Whole(number, OxygenSaturation.Greatest) is { } n ? OxygenSaturation.FromPercent(n) : null,
        VitalSign.Pain => Whole(number, PainScore.Greatest) is { } n ? PainScore.FromOfTen(n) : null,
        VitalSign.BloodPressure => Pressure(number),
        VitalSign.Temperature => Temperature(number, unit),
        VitalSign.Weight => Weight(number, unit),
        _ => throw new ArgumentOutOfRangeException(nameof(sign), sign, "no such vital sign"),
    };

    /// <summary>The unit that a bare number takes over from an earlier value: a weight's. A temperature's is inferred anew.</summary>
    public static string? UnitOf(Quantity value) => value is BodyWeight weight ? Text(weight.Unit) : null;

    /// <summary>"lb" or "kg".</summary>
    public static string Text(WeightUnit unit) => unit == WeightUnit.Pounds ? "lb" : "kg";

    private static int? Whole(SpokenNumber number, int greatest) =>
        number.Second is null && IsWhole(number.First, greatest) ? (int)number.First : null;

    private static bool IsWhole(decimal number, int greatest) => number >= 0 && number <= greatest && decimal.Truncate(number) == number;

    private static BloodPressure? Pressure(SpokenNumber number) =>
        number.Second is { } low && IsWhole(number.First, BloodPressure.Greatest) && IsWhole(low, BloodPressure.Greatest)
            ? BloodPressure.FromMillimetresOfMercury((int)number.First, (int)low)
            : null;

    private static BodyTemperature? Temperature(SpokenNumber number, string? unit)
    {
        if (number.Second is not null || !IsTenths(number.First))
        {
            return null;
        }

        return unit switch
        {
            "F" => number.First <= 150 ? BodyTemperature.FromFahrenheit(number.First) : null,
            "C" => number.First <= 60 ? BodyTemperature.FromCelsius(number.First) : null,
            _ => BodyTemperature.Inferred(number.First),
        };
    }

    private static BodyWeight? Weight(SpokenNumber number, string? unit)
    {
        if (number.Second is not null || !IsTenths(number.First) || number.First > 999.9m)
        {
            return null;
        }

        return unit switch
        {
            "lb" => BodyWeight.FromPounds(number.First),
            "kg" => BodyWeight.FromKilograms(number.First),
            _ => null,
        };
    }

    private static bool IsTenths(decimal number) => number >= 0 && decimal.Round(number, 1) == number;
}
