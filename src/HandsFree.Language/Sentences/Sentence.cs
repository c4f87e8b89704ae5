using HandsFree.Language.Meaning;

namespace HandsFree.Language.Sentences;

/// <summary>Words and what they mean.</summary>
/// <param name="Words">Lower case, one blank between.</param>
/// <param name="Meaning">The value.</param>
public sealed record Sentence(string Words, SemanticValue Meaning);
