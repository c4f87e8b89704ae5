namespace HandsFree.Core.Journal;

/// <summary>A person looked at what others recorded.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who looked.</param>
/// <param name="At">When.</param>
/// <param name="What">What was looked at: "handover", "journal list".</param>
public sealed record RecordViewed(string Id, string Person, DateTimeOffset At, string What) : JournalEvent(Id, Person, At);
