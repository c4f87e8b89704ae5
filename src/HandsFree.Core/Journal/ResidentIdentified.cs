namespace HandsFree.Core.Journal;

/// <summary>Two identifiers matched.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The aide.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The resident's id.</param>
/// <param name="By">The second identifier that matched.</param>
public sealed record ResidentIdentified(string Id, string Person, DateTimeOffset At, string Resident, SecondIdentifier By)
    : JournalEvent(Id, Person, At);
