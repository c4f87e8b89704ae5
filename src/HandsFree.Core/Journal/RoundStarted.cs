namespace HandsFree.Core.Journal;

/// <summary>An aide began a round.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The aide.</param>
/// <param name="At">When.</param>
/// <param name="RulesHash">SHA-256 in hex of the rules in force.</param>
public sealed record RoundStarted(string Id, string Person, DateTimeOffset At, string RulesHash) : JournalEvent(Id, Person, At);
