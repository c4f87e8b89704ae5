namespace HandsFree.Core.Quantities;

/// <summary>Body temperature in the unit that was said, to a tenth of a degree.</summary>
public sealed record BodyTemperature : Quantity
{
    private BodyTemperature(decimal degrees, TemperatureUnit unit) => (Degrees, Unit) = (degrees, unit);

    /// <summary>Degrees in <see cref="Unit"/>, one decimal.</summary>
    public decimal Degrees { get; }

    /// <summary>The unit that was said or inferred by range and read back.</summary>
    public TemperatureUnit Unit { get; }

    /// <summary>Degrees Celsius, exact: (F - 32) × 5/9. Compare in the spoken unit; 100 F is 37.78 C.</summary>
    public decimal Celsius => Unit == TemperatureUnit.Celsius ? Degrees : (Degrees - 32) * 5 / 9;

    /// <summary>Degrees Fahrenheit, exact: C × 9/5 + 32.</summary>
    public decimal Fahrenheit => Unit == TemperatureUnit.Fahrenheit ? Degrees : Degrees * 9 / 5 + 32;

    /// <inheritdoc/>
    public override VitalSign Sign => VitalSign.Temperature;

    /// <summary>Makes a temperature in degrees Fahrenheit, 0 to 150, at most one decimal.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or finer than a tenth.</exception>
    public static BodyTemperature FromFahrenheit(decimal degrees) => new(Checked(degrees, 150), TemperatureUnit.Fahrenheit);

    /// <summary>Makes a temperature in degrees Celsius, 0 to 60, at most one decimal.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or finer than a tenth.</exception>
    public static BodyTemperature FromCelsius(decimal degrees) => new(Checked(degrees, 60), TemperatureUnit.Celsius);

    /// <summary>Infers the unit of a bare number: 26 to 45 Celsius, 85 to 113 Fahrenheit; the ranges do not overlap
    /// (derived arithmetic; the inferred unit must be read back).</summary>
    /// <returns>The temperature, or null where no unit makes sense.</returns>
    public static BodyTemperature? Inferred(decimal degrees) => degrees switch
    {
        >= 26 and <= 45 => FromCelsius(degrees),
        >= 85 and <= 113 => FromFahrenheit(degrees),
        _ => null,
    };

    private static decimal Checked(decimal degrees, decimal greatest) =>
        degrees >= 0 && degrees <= greatest && decimal.Round(degrees, 1) == degrees
            ? degrees
            : throw new ArgumentOutOfRangeException(nameof(degrees), degrees, $"must be 0 to {greatest} in tenths of a degree");
}
