namespace HandsFree.Core.Journal;

/// <summary>An aide began a round.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The aide.</param>
/// <param name="At">When.</param>
/// <param name="RulesHash">SHA-256 in hex of the rules in force.</param>
public sealed record RoundStarted(string Id, string Person, DateTimeOffset At, string RulesHash) : JournalEvent(Id, Person, At)
{
    /// <summary>One hash of program, rules, residents and settings: the round can be told again to the same ones only. Null where the program
    /// did not keep what it was told.</summary>
    public string? Fingerprint { get; init; }
}
