using System.Collections.Immutable;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Automata;

/// <summary>A state of the automaton: what is still to be said and what was meant so far. Interned: two configurations of the
/// same content are the same object. The states that follow are found when they are asked for.</summary>
public sealed class Configuration
{
    internal Configuration(Continuation? rest, Frame? frame)
    {
        Rest = rest;
        Frame = frame;
    }

    internal Continuation? Rest { get; }

    internal Frame? Frame { get; }

    internal Moves? Moves { get; set; }
}

/// <summary>What can follow a configuration.</summary>
/// <param name="Arcs">The words that can be said next and where each leads; a word may occur more than once.</param>
/// <param name="Meanings">What the sentence means if it ends here; none where it can't end here.</param>
public sealed record Moves(ImmutableArray<Arc> Arcs, ImmutableArray<SemanticValue> Meanings);

/// <summary>One word and where it leads.</summary>
/// <param name="Word">The word, lower case.</param>
/// <param name="Target">The configuration after it.</param>
public readonly record struct Arc(string Word, Configuration Target);
