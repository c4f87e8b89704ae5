namespace HandsFree.Core.Journal;

/// <summary>No match, no readings. What was said as the second identifier is not kept.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The aide.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The id of the resident whose place was named.</param>
/// <param name="Why">"name not agreed" or "second identifier does not match".</param>
public sealed record IdentificationFailed(string Id, string Person, DateTimeOffset At, string Resident, string Why)
    : JournalEvent(Id, Person, At);
