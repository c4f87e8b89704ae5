using HandsFree.Core.Reports;

namespace HandsFree.Core.Journal;

/// <summary>Somebody was told of a report. After the nurse was told the aide is left alone.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who told, or entered that somebody did.</param>
/// <param name="At">When it was entered.</param>
/// <param name="Report">The id of the <see cref="ReportOpened"/>.</param>
/// <param name="Whom">Nurse, prescriber or family.</param>
/// <param name="Who">Who that was: an id or a title; null where it was not said.</param>
/// <param name="How">Face to face, by telephone, in writing.</param>
/// <param name="ToldAt">When it was said.</param>
public sealed record ReportTold(
    string Id, string Person, DateTimeOffset At, string Report, Told Whom, string? Who, ToldHow How, DateTimeOffset ToldAt)
    : JournalEvent(Id, Person, At);
