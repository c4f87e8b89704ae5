using HandsFree.Core.Quantities;

namespace HandsFree.Core.Residents;

/// <summary>The units in which a home writes its roster; the program keeps degrees Fahrenheit and pounds.</summary>
/// <param name="Temperature">The unit of a temperature without one.</param>
/// <param name="Weight">The unit of a weight without one.</param>
public sealed record RosterUnits(TemperatureUnit Temperature, WeightUnit Weight)
{
    private const decimal MostWeight = 999.9m;

    /// <summary>A written number as it is kept, or what is wrong with it. A temperature that the home's unit can't have was written in the
    /// other one.</summary>
    /// <param name="value">What it is a number of.</param>
    /// <param name="number">As written.</param>
    public (decimal? Kept, string? Wrong) Kept(LimitedValue value, decimal number)
    {
        int decimals = value is LimitedValue.TemperatureFahrenheit or LimitedValue.WeightPounds ? 1 : 0;
        bool tooHeavy = value == LimitedValue.WeightPounds && number > MostWeight;
        if (number < 0 || tooHeavy || decimal.Round(number, decimals) != number)
        {
            string wanted = decimals == 0 ? "a whole number" : value == LimitedValue.WeightPounds ? $"0 to {MostWeight} in tenths" : "in tenths of a degree";
            return (null, $"must be {wanted} for {RosterWords.Of(RosterWords.Values, value)}");
        }

        return value switch
        {
            LimitedValue.TemperatureFahrenheit => Fahrenheit(number),
            LimitedValue.WeightPounds => (Weight == WeightUnit.Kilograms ? BodyWeight.FromKilograms(number).Pounds : number, null),
            _ => (number, null),
        };
    }

    /// <summary>A kept number as this home writes it, to a tenth where it was converted.</summary>
    /// <param name="value">What it is a number of.</param>
    /// <param name="kept">As kept.</param>
    public decimal Written(LimitedValue value, decimal kept) => value switch
    {
        LimitedValue.TemperatureFahrenheit when Temperature == TemperatureUnit.Celsius => Tenth((kept - 32) * 5 / 9),
        LimitedValue.WeightPounds when Weight == WeightUnit.Kilograms => Tenth(kept * BodyWeight.KilogramsPerPound),
        _ => kept,
    };

    private static decimal Tenth(decimal number) => decimal.Round(number, 1, MidpointRounding.AwayFromZero);

    private (decimal? Kept, string? Wrong) Fahrenheit(decimal number)
    {
        BodyTemperature? temperature = BodyTemperature.Inferred(number);
        string unit = Temperature == TemperatureUnit.Celsius ? "Celsius" : "Fahrenheit";
        return temperature?.Unit == Temperature
            ? (temperature.Fahrenheit, null)
            : (null, $"and no temperature in degrees {unit}, the unit that home.json says or leaves as it is; write it in that unit");
    }
}
