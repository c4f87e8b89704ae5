namespace HandsFree.Core.Residents;

/// <summary>A time in which readings do not count towards what is usual for the resident.</summary>
/// <param name="Why">"antibiotic", "plan", or what else was noted.</param>
/// <param name="From">The first day.</param>
/// <param name="Until">The last day; null while it goes on.</param>
public sealed record UsualFreeze(string Why, DateOnly From, DateOnly? Until);
