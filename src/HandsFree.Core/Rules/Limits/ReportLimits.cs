namespace HandsFree.Core.Rules.Limits;

/// <summary>Between which lines a single value of a resident leads to no report, as long as nothing else is known: symptoms, other signs,
/// and what has changed from earlier values are not asked.</summary>
/// <param name="Low">The lower line; null where no rule has one.</param>
/// <param name="High">The upper line; null where no rule has one.</param>
public sealed record ReportLimits(ReportLimit? Low, ReportLimit? High)
{
    /// <summary>No limit on either side.</summary>
    public static ReportLimits None { get; } = new(null, null);

    /// <summary>-1 below the lower line, 1 above the upper one, 0 between.</summary>
    public int SideOf(decimal number) =>
        Low is { } low && (number < low.Number || (low.IsBeyond && number == low.Number)) ? -1
        : High is { } high && (number > high.Number || (high.IsBeyond && number == high.Number)) ? 1
        : 0;
}
