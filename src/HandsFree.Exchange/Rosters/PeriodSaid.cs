namespace HandsFree.Exchange.Rosters;

/// <summary>A reason with its first and last day; the last is null while it goes on.</summary>
internal sealed record PeriodSaid(string Why, DateOnly From, DateOnly? Until);
