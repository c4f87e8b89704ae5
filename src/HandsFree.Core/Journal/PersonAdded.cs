using HandsFree.Core.People;

namespace HandsFree.Core.Journal;

/// <summary>A person was set up and can unlock the journal.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who did it.</param>
/// <param name="At">When.</param>
/// <param name="Who">The new person's id.</param>
/// <param name="Name">Her name, or null.</param>
/// <param name="Role">What she may do.</param>
public sealed record PersonAdded(string Id, string Person, DateTimeOffset At, string Who, string? Name, Role Role) : JournalEvent(Id, Person, At);
