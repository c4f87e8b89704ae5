using HandsFree.Core.Rules;

namespace HandsFree.Core.Journal;

/// <summary>The content of rules that decide from here on, kept once for each hash, so that a decision can be made again.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who began the round.</param>
/// <param name="At">When.</param>
/// <param name="Hash">SHA-256 in hex of the rules, as decisions name it.</param>
/// <param name="Files">Each file's name and content.</param>
public sealed record RulesKept(string Id, string Person, DateTimeOffset At, string Hash, IReadOnlyDictionary<string, string> Files)
    : JournalEvent(Id, Person, At)
{
    /// <summary>The name under which the home's own rules are kept among the program's.</summary>
    public const string HomeFile = "rules.json of the home";

    /// <summary>The rules as they were.</summary>
    public RulebookLoading Load() => Rulebook.Load(
        [.. Files.Where(file => file.Key != HomeFile).Select(file => new RuleFile(file.Key, file.Value))],
        Files.TryGetValue(HomeFile, out string? own) ? new RuleFile(HomeFile, own) : null);
}
