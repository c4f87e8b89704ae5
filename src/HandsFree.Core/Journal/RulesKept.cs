namespace HandsFree.Core.Journal;

/// <summary>The content of rules that decide from here on, kept once for each hash, so that a decision can be made again.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who began the round.</param>
/// <param name="At">When.</param>
/// <param name="Hash">SHA-256 in hex of the rules, as decisions name it.</param>
/// <param name="Files">Each file's name and content.</param>
public sealed record RulesKept(string Id, string Person, DateTimeOffset At, string Hash, IReadOnlyDictionary<string, string> Files)
    : JournalEvent(Id, Person, At);
