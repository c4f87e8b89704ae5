using HandsFree.Core.Quantities;

namespace HandsFree.Core.Journal;

/// <summary>A rule asked for a second measurement.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The aide.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The resident's id.</param>
/// <param name="Sign">Which vital sign.</param>
/// <param name="Reading">The id of the reading that raised the doubt.</param>
/// <param name="Rule">The rule that asks.</param>
/// <param name="Instruction">What to do.</param>
/// <param name="DueAt">From when it can be done.</param>
public sealed record RecheckAsked(
    string Id, string Person, DateTimeOffset At, string Resident, VitalSign Sign, string Reading, string Rule, string Instruction,
    DateTimeOffset DueAt)
    : JournalEvent(Id, Person, At);
