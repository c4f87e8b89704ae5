namespace HandsFree.Core.Journal;

/// <summary>A device gave up its part of the journal: from here on nothing opens it there. Only the recovery key brings it to another
/// device.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who did it.</param>
/// <param name="At">When.</param>
/// <param name="Why">Why.</param>
public sealed record DeviceRetired(string Id, string Person, DateTimeOffset At, string Why) : JournalEvent(Id, Person, At);
