using System.Collections.Immutable;
using HandsFree.Language.Automata;
using HandsFree.Language.Meaning;

namespace HandsFree.Speech.Small;

/// <summary>A state of the deterministic automaton over the network's words: all configurations that some words can have led to.</summary>
internal sealed class SentenceState(ImmutableArray<Configuration> configurations, ImmutableArray<SemanticValue> meanings)
{
    /// <summary>The grammar's configurations in it.</summary>
    internal ImmutableArray<Configuration> Configurations { get; } = configurations;

    /// <summary>What the sentence means if it ends here.</summary>
    internal ImmutableArray<SemanticValue> Meanings { get; } = meanings;

    /// <summary>The words that can follow, by their place in a row of the network; null until they are asked for.</summary>
    internal (int Place, SentenceState Target)[]? Arcs { get; set; }
}
