namespace HandsFree.Core.Observations;

/// <summary>A reading of the same resident that was confirmed earlier.</summary>
/// <param name="Reading">What was confirmed.</param>
/// <param name="MeasuredAt">When it was measured.</param>
public sealed record PastReading(Reading Reading, DateTimeOffset MeasuredAt);
