namespace HandsFree.Exchange.Rosters;

/// <summary>Where a patient's encounter puts her.</summary>
/// <param name="Room">1 to 999.</param>
/// <param name="Bed">a to d, or null.</param>
/// <param name="OnLeaveSince">The first day of a leave; null for who is there.</param>
internal sealed record FhirPlace(int Room, string? Bed, DateOnly? OnLeaveSince);
