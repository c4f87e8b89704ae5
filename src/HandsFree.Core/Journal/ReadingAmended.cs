namespace HandsFree.Core.Journal;

/// <summary>Who amended the record, how and why. It stands with the event that is amended and the one that takes its place, each of which
/// stays in the journal.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who amends.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The id of the resident whose record is amended.</param>
/// <param name="Kind">How.</param>
/// <param name="Event">The id of the event that is amended; null for a late entry.</param>
/// <param name="Becomes">The id of the event that takes its place; null for one entered in error.</param>
/// <param name="MovedTo">The id of the resident that the value belongs to; null but for the wrong resident.</param>
/// <param name="Reason">Why, in the person's words.</param>
public sealed record ReadingAmended(
    string Id, string Person, DateTimeOffset At, string Resident, AmendmentKind Kind, string? Event, string? Becomes, string? MovedTo, string Reason)
    : JournalEvent(Id, Person, At);
