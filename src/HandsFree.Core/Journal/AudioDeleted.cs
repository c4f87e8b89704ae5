namespace HandsFree.Core.Journal;

/// <summary>A recording is deleted.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who opened the journal when its days were over, or who asked for it.</param>
/// <param name="At">When.</param>
/// <param name="Clip">The recording's name.</param>
/// <param name="Why">"its days are over", or what else.</param>
public sealed record AudioDeleted(string Id, string Person, DateTimeOffset At, string Clip, string Why) : JournalEvent(Id, Person, At);
