namespace HandsFree.Core.Journal;

/// <summary>An earlier event should never have been; it stays in the journal and counts no more.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who says so.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The resident's id.</param>
/// <param name="Event">The id of the event that is in error.</param>
/// <param name="Reason">Why: "undo", or what the person says.</param>
public sealed record EnteredInError(string Id, string Person, DateTimeOffset At, string Resident, string Event, string Reason)
    : JournalEvent(Id, Person, At);
