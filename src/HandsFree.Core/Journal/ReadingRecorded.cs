using HandsFree.Core.Observations;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Journal;

/// <summary>A reading that was read back and confirmed, with what the rules said of it.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The aide.</param>
/// <param name="At">When it was entered.</param>
/// <param name="Resident">The resident's id.</param>
/// <param name="Confirmed">The reading and the way from the hearing to the confirmation.</param>
/// <param name="Decision">What the rules said, by which rules.</param>
/// <param name="IsRecheck">A second or third reading that a rule asked for.</param>
/// <param name="Amends">The id of the reading that this one replaces with more said about it, or null.</param>
public sealed record ReadingRecorded(
    string Id, string Person, DateTimeOffset At, string Resident, Confirmed Confirmed, Decision Decision, bool IsRecheck, string? Amends)
    : JournalEvent(Id, Person, At);
