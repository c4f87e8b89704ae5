namespace HandsFree.Core.Observations;

/// <summary>A reading of the same resident that was confirmed earlier.</summary>
/// <param name="Reading">What was confirmed.</param>
/// <param name="MeasuredAt">When it was measured.</param>
public sealed record PastReading(Reading Reading, DateTimeOffset MeasuredAt)
{
    /// <summary>Whether it may count towards what is usual for the resident: not while a report of hers was open.</summary>
    public bool CountsAsUsual { get; init; } = true;
}
