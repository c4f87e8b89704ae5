using System.Collections.Immutable;
using HandsFree.Language.Automata;

namespace HandsFree.Speech.Small;

/// <summary>A state of the deterministic automaton over the network's words: all configurations that some words can have led to.</summary>
internal sealed class SentenceState(ImmutableArray<Configuration> configurations)
{
    /// <summary>The grammar's configurations in it.</summary>
    internal ImmutableArray<Configuration> Configurations { get; } = configurations;

    /// <summary>The words that can follow; null until they are asked for.</summary>
    internal SentenceArc[]? Arcs { get; set; }
}

/// <summary>One word that can follow a state.</summary>
/// <param name="place">The word's place in a row of the network.</param>
/// <param name="configurations">Where it leads.</param>
internal sealed class SentenceArc(int place, ImmutableArray<Configuration> configurations)
{
    /// <summary>The word's place in a row of the network.</summary>
    internal int Place { get; } = place;

    /// <summary>Where it leads.</summary>
    internal ImmutableArray<Configuration> Configurations { get; } = configurations;

    /// <summary>The state there; null until someone goes there.</summary>
    internal SentenceState? Target { get; set; }
}
