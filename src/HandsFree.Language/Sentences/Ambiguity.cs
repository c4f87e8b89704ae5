using System.Collections.Immutable;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Sentences;

/// <summary>A sentence with more than one meaning.</summary>
/// <param name="Words">The sentence.</param>
/// <param name="Meanings">Two or more.</param>
public sealed record Ambiguity(string Words, ImmutableArray<SemanticValue> Meanings);
