namespace HandsFree.Core.Journal;

/// <summary>The journal was opened with the emergency key. Everybody who opens it afterwards is told, until a supervisor has made a new key.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The emergency key.</param>
/// <param name="At">When.</param>
/// <param name="Why">Who opened it and why, in her own words.</param>
public sealed record EmergencyOpened(string Id, string Person, DateTimeOffset At, string Why) : JournalEvent(Id, Person, At);
