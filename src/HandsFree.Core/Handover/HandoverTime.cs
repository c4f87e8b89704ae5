using HandsFree.Core.Reports;

namespace HandsFree.Core.Handover;

/// <summary>The times of a handover.</summary>
/// <param name="Since">The beginning of the list: what was taken or not taken before it is left out, open reports stay. Null for all.</param>
/// <param name="Now">The present moment; null where nothing is to be overdue and no plan ends.</param>
public sealed record HandoverTime(DateTimeOffset? Since = null, DateTimeOffset? Now = null)
{
    /// <summary>After what time something is overdue.</summary>
    public Overdue Overdue { get; init; } = Overdue.Default;
}
