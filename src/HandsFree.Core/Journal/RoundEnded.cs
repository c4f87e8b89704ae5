namespace HandsFree.Core.Journal;

/// <summary>An aide ended a round.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The aide.</param>
/// <param name="At">When.</param>
public sealed record RoundEnded(string Id, string Person, DateTimeOffset At) : JournalEvent(Id, Person, At);
