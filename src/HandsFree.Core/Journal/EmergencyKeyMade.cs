namespace HandsFree.Core.Journal;

/// <summary>A new emergency key was made and put into its envelope; the one before opens nothing any more.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who did it.</param>
/// <param name="At">When.</param>
public sealed record EmergencyKeyMade(string Id, string Person, DateTimeOffset At) : JournalEvent(Id, Person, At);
