namespace HandsFree.Core.Quantities;

/// <summary>The unit in which a weight was said.</summary>
public enum WeightUnit
{
    /// <summary>UCUM [lb_av].</summary>
    Pounds,

    /// <summary>UCUM kg.</summary>
    Kilograms,
}
