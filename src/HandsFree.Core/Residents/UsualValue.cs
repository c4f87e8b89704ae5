using HandsFree.Core.Observations;

namespace HandsFree.Core.Residents;

/// <summary>What is usual for one resident; it only ever raises doubt, it never makes a value likelier.</summary>
/// <param name="Value">Which number.</param>
/// <param name="Median">The median of earlier readings.</param>
public sealed record UsualValue(LimitedValue Value, decimal Median)
{
    /// <summary>The site of a usual temperature; null where it was not noted, then it stands for every site.</summary>
    public TemperatureSite? Site { get; init; }
}
