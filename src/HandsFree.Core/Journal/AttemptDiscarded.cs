using HandsFree.Core.Observations;

namespace HandsFree.Core.Journal;

/// <summary>A reading that was heard and not kept. The attempt stays for whoever looks into it; it is no value.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The aide.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The resident's id.</param>
/// <param name="Heard">What was heard.</param>
/// <param name="Reading">What it would have been; null where no such value can be.</param>
/// <param name="ReadBack">What was read back; null where it did not come to that.</param>
/// <param name="Why">"no", "corrected", "second saying differs", "not possible", "left open", "stopped", "cancelled", "goodbye".</param>
public sealed record AttemptDiscarded(
    string Id, string Person, DateTimeOffset At, string Resident, Heard Heard, Reading? Reading, string? ReadBack, string Why)
    : JournalEvent(Id, Person, At);
