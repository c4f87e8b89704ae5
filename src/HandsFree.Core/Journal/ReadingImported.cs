using HandsFree.Core.Observations;

namespace HandsFree.Core.Journal;

/// <summary>A reading that another system recorded. It was neither said nor confirmed here: it tells what is usual and how values went, and is
/// never passed on as ours.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who imported it.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The resident's id.</param>
/// <param name="Reading">The reading.</param>
/// <param name="MeasuredAt">When it was measured, as the other system says.</param>
/// <param name="Source">Where it comes from: "past.json, Observation/12".</param>
public sealed record ReadingImported(string Id, string Person, DateTimeOffset At, string Resident, Reading Reading, DateTimeOffset MeasuredAt, string Source)
    : JournalEvent(Id, Person, At);
