namespace HandsFree.Core.Quantities;

/// <summary>Heart rate in beats per minute (UCUM /min).</summary>
public sealed record HeartRate : Quantity
{
    /// <summary>The greatest representable value, included; the least is 0.</summary>
    public const int Greatest = 400;

    private HeartRate(int value) => PerMinute = value;

    /// <summary>The value; 0 to <see cref="Greatest"/>, both included.</summary>
    public int PerMinute { get; }

    /// <inheritdoc/>
    public override VitalSign Sign => VitalSign.Pulse;

    /// <summary>Makes the quantity.</summary>
    /// <param name="value">0 to <see cref="Greatest"/>, both included.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside what can be represented.</exception>
    public static HeartRate FromPerMinute(int value) => new(Within(value, 0, Greatest, "per minute"));
}
