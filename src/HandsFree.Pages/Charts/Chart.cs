namespace HandsFree.Pages.Charts;

/// <summary>What a chart of one vital sign shows; no reading is left out and none is averaged.</summary>
/// <param name="From">Its left edge.</param>
/// <param name="Until">Its right edge.</param>
/// <param name="Points">In the order of time.</param>
/// <param name="Low">The lower limit, or null.</param>
/// <param name="High">The upper limit, or null.</param>
/// <param name="UsualLow">The lower edge of what is usual, or null.</param>
/// <param name="UsualHigh">The upper edge of what is usual, or null.</param>
public sealed record Chart(
    DateTimeOffset From, DateTimeOffset Until, IReadOnlyList<ChartPoint> Points, double? Low, double? High, double? UsualLow, double? UsualHigh)
{
    /// <summary>The lower limit of the lower number of a pressure, or null.</summary>
    public double? LowerLow { get; init; }

    /// <summary>The upper limit of the lower number of a pressure, or null.</summary>
    public double? LowerHigh { get; init; }
}
