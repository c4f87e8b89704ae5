namespace HandsFree.Core.Quantities;

/// <summary>Oxygen saturation of the blood in percent (UCUM %).</summary>
public sealed record OxygenSaturation : Quantity
{
    /// <summary>The greatest representable value, included; the least is 0.</summary>
    public const int Greatest = 199;

    private OxygenSaturation(int value) => Percent = value;

    /// <summary>The value; 0 to <see cref="Greatest"/>, both included.</summary>
    public int Percent { get; }

    /// <inheritdoc/>
    public override VitalSign Sign => VitalSign.OxygenSaturation;

    /// <summary>Makes the quantity.</summary>
    /// <param name="value">0 to <see cref="Greatest"/>, both included.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside what can be represented.</exception>
    public static OxygenSaturation FromPercent(int value) => new(Within(value, 0, Greatest, "percent"));
}
