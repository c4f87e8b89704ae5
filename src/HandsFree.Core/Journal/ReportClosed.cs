namespace HandsFree.Core.Journal;

/// <summary>Nothing more is to be done about a report.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The nurse.</param>
/// <param name="At">When.</param>
/// <param name="Report">The id of the <see cref="ReportOpened"/>.</param>
/// <param name="Outcome">What came of it, in her words.</param>
public sealed record ReportClosed(string Id, string Person, DateTimeOffset At, string Report, string Outcome) : JournalEvent(Id, Person, At);
