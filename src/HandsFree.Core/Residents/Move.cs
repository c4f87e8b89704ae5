namespace HandsFree.Core.Residents;

/// <summary>A move within the home, said until it is old: whoever opens the old place is told where the resident went, whoever opens
/// the new one that she came.</summary>
/// <param name="FromRoom">The room she left, 1 to 999.</param>
/// <param name="FromBed">The bed she left, or null.</param>
/// <param name="On">The day.</param>
public sealed record Move(int FromRoom, string? FromBed, DateOnly On);
