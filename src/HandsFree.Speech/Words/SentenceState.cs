using System.Collections.Immutable;
using HandsFree.Language.Automata;

namespace HandsFree.Speech.Words;

/// <summary>A state of the deterministic automaton over the network's words: all configurations that some words can have led to.</summary>
internal sealed class SentenceState(ImmutableArray<Configuration> configurations)
{
    /// <summary>The grammar's configurations in it.</summary>
    internal ImmutableArray<Configuration> Configurations { get; } = configurations;

    /// <summary>The words that can follow, by their place; null until they are asked for.</summary>
    internal Dictionary<int, SentenceArc>? Arcs { get; set; }
}

/// <summary>One word that can follow a state.</summary>
/// <param name="place">The word's place in a row of the network.</param>
/// <param name="word">The word as the grammar writes it; of words of one sound the first.</param>
/// <param name="configurations">Where it leads.</param>
internal sealed class SentenceArc(int place, string word, ImmutableArray<Configuration> configurations)
{
    /// <summary>The word's place in a row of the network.</summary>
    internal int Place { get; } = place;

    /// <summary>The word as the grammar writes it.</summary>
    internal string Word { get; } = word;

    /// <summary>Where it leads.</summary>
    internal ImmutableArray<Configuration> Configurations { get; } = configurations;

    /// <summary>The state there; null until someone goes there.</summary>
    internal SentenceState? Target { get; set; }
}
