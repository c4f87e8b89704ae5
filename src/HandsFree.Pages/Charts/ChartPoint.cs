namespace HandsFree.Pages.Charts;

/// <summary>One reading in a chart.</summary>
/// <param name="At">When it was measured.</param>
/// <param name="Value">The number; of a pressure the upper one.</param>
/// <param name="Lower">The lower number of a pressure; null for other signs.</param>
/// <param name="Kind">How it is drawn.</param>
/// <param name="Side">1 above the upper limit, -1 below the lower one, 0 between.</param>
/// <param name="Letters">Said beside it, such as "L" for a late entry; null for nothing.</param>
public sealed record ChartPoint(DateTimeOffset At, double Value, double? Lower, PointKind Kind, int Side, string? Letters)
{
    /// <summary>Where the value went that took this one's place; null where none did.</summary>
    public double? CorrectedTo { get; init; }
}
