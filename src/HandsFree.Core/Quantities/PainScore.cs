namespace HandsFree.Core.Quantities;

/// <summary>Pain as the resident says it, 0 none to 10 worst; a whole number.</summary>
public sealed record PainScore : Quantity
{
    /// <summary>The greatest representable value, included; the least is 0.</summary>
    public const int Greatest = 99;

    private PainScore(int value) => OfTen = value;

    /// <summary>The value; 0 to <see cref="Greatest"/>, both included.</summary>
    public int OfTen { get; }

    /// <inheritdoc/>
    public override VitalSign Sign => VitalSign.Pain;

    /// <summary>Makes the quantity.</summary>
    /// <param name="value">0 to <see cref="Greatest"/>, both included.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside what can be represented.</exception>
    public static PainScore FromOfTen(int value) => new(Within(value, 0, Greatest, "of ten"));
}
