namespace HandsFree.Core.Journal;

/// <summary>Another system has confirmed, and shown, that it has the record up to an entry.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who sent it.</param>
/// <param name="At">When.</param>
/// <param name="To">The address.</param>
/// <param name="Unit">Of one unit alone, or null for the whole record.</param>
/// <param name="Through">The number of that entry.</param>
public sealed record RecordDelivered(string Id, string Person, DateTimeOffset At, string To, string? Unit, long Through) : JournalEvent(Id, Person, At);
