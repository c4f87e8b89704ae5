namespace HandsFree.Core.Journal;

/// <summary>A nurse knows of a report.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The nurse.</param>
/// <param name="At">When.</param>
/// <param name="Report">The id of the <see cref="ReportOpened"/>.</param>
public sealed record ReportAcknowledged(string Id, string Person, DateTimeOffset At, string Report) : JournalEvent(Id, Person, At)
{
    /// <summary>What she advised, read back to her; null where she advised nothing.</summary>
    public string? Advised { get; init; }
}
