namespace HandsFree.Core.Quantities;

/// <summary>Body weight in the unit that was said, to a tenth.</summary>
public sealed record BodyWeight : Quantity
{
    /// <summary>The international pound in kilograms, exact by definition.</summary>
    public const decimal KilogramsPerPound = 0.45359237m;

    private BodyWeight(decimal value, WeightUnit unit) => (Value, Unit) = (value, unit);

    /// <summary>The number in <see cref="Unit"/>, one decimal.</summary>
    public decimal Value { get; }

    /// <summary>Pounds or kilograms.</summary>
    public WeightUnit Unit { get; }

    /// <summary>Pounds, by the exact 0.45359237 kg a pound.</summary>
    public decimal Pounds => Unit == WeightUnit.Pounds ? Value : Value / KilogramsPerPound;

    /// <inheritdoc/>
    public override VitalSign Sign => VitalSign.Weight;

    /// <summary>Makes a weight in pounds, 0 to 999.9, at most one decimal.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or finer than a tenth.</exception>
    public static BodyWeight FromPounds(decimal value) => new(Checked(value), WeightUnit.Pounds);

    /// <summary>Makes a weight in kilograms, 0 to 999.9, at most one decimal.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or finer than a tenth.</exception>
    public static BodyWeight FromKilograms(decimal value) => new(Checked(value), WeightUnit.Kilograms);

    private static decimal Checked(decimal value) =>
        value >= 0 && value <= 999.9m && decimal.Round(value, 1) == value
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "must be 0 to 999.9 in tenths");
}
