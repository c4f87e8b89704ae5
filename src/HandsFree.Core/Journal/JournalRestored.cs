namespace HandsFree.Core.Journal;

/// <summary>A backup was put in the journal's place.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who did it.</param>
/// <param name="At">When.</param>
/// <param name="Events">How many events the backup had.</param>
/// <param name="OtherDevice">Whether it came from another device.</param>
public sealed record JournalRestored(string Id, string Person, DateTimeOffset At, long Events, bool OtherDevice) : JournalEvent(Id, Person, At)
{
    /// <summary>How many events the device had seen that are not in the backup.</summary>
    public long Lost { get; init; }
}
