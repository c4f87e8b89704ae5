namespace HandsFree.Core.Observations;

/// <summary>Whose reading it is and when.</summary>
/// <param name="Person">The id of the aide who measured and spoke.</param>
/// <param name="MeasuredAt">When it was measured; for a late entry the latest moment at which that can have been.</param>
/// <param name="EnteredAt">When it was confirmed.</param>
/// <param name="Late">Entered after the aide had left: a late entry, marked as one.</param>
public sealed record Attribution(string Person, DateTimeOffset MeasuredAt, DateTimeOffset EnteredAt, bool Late = false);
