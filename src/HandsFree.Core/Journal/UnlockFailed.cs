namespace HandsFree.Core.Journal;

/// <summary>Somebody tried to unlock a locked session and did not.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Whose session it is; who tried is not known.</param>
/// <param name="At">When.</param>
/// <param name="Wait">How long the next try has to wait.</param>
public sealed record UnlockFailed(string Id, string Person, DateTimeOffset At, TimeSpan Wait) : JournalEvent(Id, Person, At);
