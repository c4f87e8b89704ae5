namespace HandsFree.Core.Journal;

/// <summary>A supervisor took the journal as it lies there, although the device had seen it further on or did not know the place.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who did it.</param>
/// <param name="At">When.</param>
/// <param name="Events">How many events it had.</param>
/// <param name="Why">Her reason.</param>
public sealed record JournalAccepted(string Id, string Person, DateTimeOffset At, long Events, string Why) : JournalEvent(Id, Person, At);
