using HandsFree.Core.Quantities;

namespace HandsFree.Core.Residents;

/// <summary>How often one vital sign of one resident is due.</summary>
/// <param name="Sign">Which.</param>
/// <param name="Every">How often.</param>
/// <param name="OrderedBy">Who ordered it, where it was ordered; null for the home's own plan.</param>
public sealed record ScheduledSign(VitalSign Sign, Frequency Every, string? OrderedBy)
{
    /// <summary>The day of a weekly one; null where any will do.</summary>
    public DayOfWeek? Weekday { get; init; }

    /// <summary>The day of a monthly one, 1 to 28; null where any will do.</summary>
    public int? DayOfMonth { get; init; }
}
