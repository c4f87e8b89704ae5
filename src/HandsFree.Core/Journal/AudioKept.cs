namespace HandsFree.Core.Journal;

/// <summary>A recording was kept, sealed, beside the journal, because the home's file says so.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Whose session.</param>
/// <param name="At">When.</param>
/// <param name="Clip">The recording's name: 32 hex digits of chance.</param>
/// <param name="For">The id of the event that it belongs to.</param>
/// <param name="SpokenAt">When the speech began.</param>
/// <param name="Seconds">Its length.</param>
/// <param name="Until">From when on it is to be deleted.</param>
public sealed record AudioKept(
    string Id, string Person, DateTimeOffset At, string Clip, string For, DateTimeOffset SpokenAt, double Seconds, DateTimeOffset Until)
    : JournalEvent(Id, Person, At);
