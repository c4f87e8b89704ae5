namespace HandsFree.Core.Quantities;

/// <summary>The value of one vital sign with its unit. What can be represented is wider than what can be true: whether a
/// value is possible for a person is decided by the entry limits of the rules, so that a refused number can be repeated.</summary>
public abstract record Quantity
{
    private protected Quantity()
    {
    }

    /// <summary>Which vital sign this is a value of.</summary>
    public abstract VitalSign Sign { get; }

    private protected static int Within(int value, int least, int greatest, string unit) =>
        value >= least && value <= greatest
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, $"must be {least} to {greatest} {unit}");
}
