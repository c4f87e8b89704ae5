namespace HandsFree.Core.Journal;

/// <summary>A session was locked, because nothing was accepted for the home's time. The round goes on after it.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Whose session.</param>
/// <param name="At">When.</param>
public sealed record SessionLocked(string Id, string Person, DateTimeOffset At) : JournalEvent(Id, Person, At);
