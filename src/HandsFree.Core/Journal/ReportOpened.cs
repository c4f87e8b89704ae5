using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;

namespace HandsFree.Core.Journal;

/// <summary>A nurse is to be told. Situation and background only; assessment and advice are the nurse's.</summary>
/// <param name="Id">Event id; the report's number too.</param>
/// <param name="Person">The aide.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The resident's id.</param>
/// <param name="Urgency">Now, or this shift.</param>
/// <param name="Sign">Which vital sign; null where the report is no reading's.</param>
/// <param name="Readings">The ids of the readings it rests on, oldest first; both where there was a recheck.</param>
/// <param name="Situation">What is reported, in words.</param>
/// <param name="Rules">The rules that ask for it.</param>
public sealed record ReportOpened(
    string Id, string Person, DateTimeOffset At, string Resident, ReportUrgency Urgency, VitalSign? Sign, IReadOnlyList<string> Readings,
    string Situation, IReadOnlyList<string> Rules)
    : JournalEvent(Id, Person, At);
