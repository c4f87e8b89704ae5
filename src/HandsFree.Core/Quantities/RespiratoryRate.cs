namespace HandsFree.Core.Quantities;

/// <summary>Respiratory rate in breaths per minute (UCUM /min).</summary>
public sealed record RespiratoryRate : Quantity
{
    /// <summary>The greatest representable value, included; the least is 0.</summary>
    public const int Greatest = 200;

    private RespiratoryRate(int value) => PerMinute = value;

    /// <summary>The value; 0 to <see cref="Greatest"/>, both included.</summary>
    public int PerMinute { get; }

    /// <inheritdoc/>
    public override VitalSign Sign => VitalSign.Respirations;

    /// <summary>Makes the quantity.</summary>
    /// <param name="value">0 to <see cref="Greatest"/>, both included.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside what can be represented.</exception>
    public static RespiratoryRate FromPerMinute(int value) => new(Within(value, 0, Greatest, "per minute"));
}
