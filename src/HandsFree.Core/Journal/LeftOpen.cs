using HandsFree.Core.Quantities;

namespace HandsFree.Core.Journal;

/// <summary>A value that was not understood or not confirmed after three tries; named again at the end of the round.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The aide.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The resident's id.</param>
/// <param name="Sign">Which vital sign.</param>
public sealed record LeftOpen(string Id, string Person, DateTimeOffset At, string Resident, VitalSign Sign) : JournalEvent(Id, Person, At);
