using HandsFree.Language.Grammars;

namespace HandsFree.Language.Automata;

/// <summary>What is still to be matched: a node, then the rest. Interned by the automaton, so that two of the same content are
/// the same object.</summary>
/// <param name="node">The next node; null for the end of a rule.</param>
/// <param name="rest">What comes after; null for the end of the sentence.</param>
internal sealed class Continuation(Expansion? node, Continuation? rest)
{
    public Expansion? Node { get; } = node;

    public Continuation? Rest { get; } = rest;
}
