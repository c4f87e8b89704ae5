using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Journal;

/// <summary>A reading, or all that were left of a set, that was not taken.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The aide.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The resident's id.</param>
/// <param name="Sign">Which vital sign; null for all that were not taken.</param>
/// <param name="Reason">Why.</param>
/// <param name="Heard">What was heard.</param>
/// <param name="ReadBack">What was read back.</param>
public sealed record NotTakenRecorded(
    string Id, string Person, DateTimeOffset At, string Resident, VitalSign? Sign, NotTakenReason Reason, Heard Heard, string ReadBack)
    : JournalEvent(Id, Person, At);
