using HandsFree.Language.Meaning;

namespace HandsFree.Language.Tests.Sentences;

/// <summary>One line of a file of sentences beside a grammar.</summary>
/// <param name="Rule">The rule that is listened for; null for the public one.</param>
/// <param name="Words">The sentence.</param>
/// <param name="Meaning">What it means; null where it must be no sentence.</param>
/// <param name="Line">From 1.</param>
internal sealed record SentenceLine(string? Rule, string Words, SemanticValue? Meaning, int Line);
