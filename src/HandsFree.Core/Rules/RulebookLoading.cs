using HandsFree.Core.Files;

namespace HandsFree.Core.Rules;

/// <summary>What came of loading rule files: a rulebook, or every error found, never both.</summary>
/// <param name="Rulebook">The rules in force, or null where a file is broken.</param>
/// <param name="Errors">Every error with file and line; empty where the rulebook is there.</param>
public sealed record RulebookLoading(Rulebook? Rulebook, IReadOnlyList<FileError> Errors);
