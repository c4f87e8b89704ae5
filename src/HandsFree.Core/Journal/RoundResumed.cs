namespace HandsFree.Core.Journal;

/// <summary>A round that was cut off goes on where it was.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The aide.</param>
/// <param name="At">When.</param>
public sealed record RoundResumed(string Id, string Person, DateTimeOffset At) : JournalEvent(Id, Person, At);
