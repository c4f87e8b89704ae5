namespace HandsFree.Core.Journal;

/// <summary>Something that who reads a report must know: a reading that it rests on was amended.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Whose doing it is.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The resident's id.</param>
/// <param name="Report">The id of the report.</param>
/// <param name="Text">What it is, in words.</param>
public sealed record ReportNoted(string Id, string Person, DateTimeOffset At, string Resident, string Report, string Text)
    : JournalEvent(Id, Person, At);
