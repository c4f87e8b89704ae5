using System.Collections.Immutable;
using HandsFree.Language.Automata;
using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Sentences;

/// <summary>Looks through all word sequences of a grammar for one that has two meanings: the automaton made deterministic, each state
/// a set of configurations. Values that no later tag computes with are replaced by marks, the same value by the same mark, so that
/// "… seventy six over" and "… seventy eight over" go on as one; two different meanings never become equal by that.</summary>
public static class Ambiguities
{
    /// <summary>Sentences with two meanings, shortest first, one for many that are ambiguous in the same way; none when the grammar
    /// is free of them.</summary>
    /// <param name="grammar">The grammar.</param>
    /// <param name="most">Stop after so many.</param>
    /// <param name="longest">Words of the longest sentence looked at; only a grammar with nested recursion needs an end.</param>
    public static IReadOnlyList<Ambiguity> Find(Grammar grammar, int most = 20, int longest = 40)
    {
        var automaton = new WordAutomaton(grammar);
        var found = new List<Ambiguity>();
        var known = new HashSet<ConfigurationSet>();
        var open = new Queue<(ConfigurationSet At, ImmutableStack<string> Words, int Length)>();
        open.Enqueue((new([automaton.Start]), [], 0));
        while (open.TryDequeue(out var state) && found.Count < most)
        {
            List<Moves> moves = [.. state.At.Items.Select(automaton.Next)];
            if (moves.SelectMany(m => m.Meanings).Distinct().Skip(1).Any())
            {
                Report(grammar, string.Join(' ', state.Words.Reverse()), found);
            }

            if (state.Length == longest)
            {
                continue;
            }

            foreach (var next in moves.SelectMany(m => m.Arcs).GroupBy(a => a.Word, a => a.Target))
            {
                var set = new ConfigurationSet(Marks.Set(automaton, [.. next.Distinct()]));
                if (known.Add(set))
                {
                    open.Enqueue((set, state.Words.Push(next.Key), state.Length + 1));
                }
            }
        }

        return found;
    }

    private static void Report(Grammar grammar, string words, List<Ambiguity> found)
    {
        ImmutableArray<SemanticValue> meanings = [.. Matcher.Match(grammar, words)];
        if (meanings.Length > 1)
        {
            found.Add(new(words, meanings));
        }
    }
}
