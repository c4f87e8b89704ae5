namespace HandsFree.Core.Journal;

/// <summary>A nurse ends a plan before its time: from then on the other limits decide again. What was decided while it stood stays.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The nurse.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The resident's id.</param>
/// <param name="Report">The id of the report that the plan followed.</param>
/// <param name="Plan">The id of the plan.</param>
/// <param name="Why">Why, in her words.</param>
public sealed record PlanWithdrawn(string Id, string Person, DateTimeOffset At, string Resident, string Report, string Plan, string Why)
    : JournalEvent(Id, Person, At);
