namespace HandsFree.Core.Journal;

/// <summary>A person can unlock the journal no more.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who did it.</param>
/// <param name="At">When.</param>
/// <param name="Who">The person's id.</param>
public sealed record PersonRemoved(string Id, string Person, DateTimeOffset At, string Who) : JournalEvent(Id, Person, At);
