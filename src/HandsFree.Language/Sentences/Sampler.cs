using System.Collections.Immutable;
using HandsFree.Language.Automata;
using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Sentences;

/// <summary>From value to sentences: what can be said, all of it, at random, or for one value.</summary>
public static class Sampler
{
    /// <summary>A sentence at random, choices drawn by their JSGF weights, repetitions short.</summary>
    public static string Draw(Grammar grammar, Random random)
    {
        var words = new List<string>();
        Draw(grammar.Root.Body, grammar.Facts, random, words);
        return string.Join(' ', words);
    }

    /// <summary>All sentences, in the order of the grammar; endless for a grammar that repeats, so take what you need.</summary>
    public static IEnumerable<Sentence> All(Grammar grammar) => Walk(grammar, _ => true);

    /// <summary>All sentences that mean one value. Ways that can't mean it any more are left early: a field that is set otherwise and
    /// not set again, a field that will be set and isn't wanted; a list, and a text that a rule builds with <c>$</c>, only grow.</summary>
    public static IEnumerable<Sentence> For(Grammar grammar, SemanticValue wanted)
    {
        var goal = new Goal(wanted);
        return Walk(grammar, goal.IsPossible).Where(s => s.Meaning.Equals(wanted));
    }

    private static IEnumerable<Sentence> Walk(Grammar grammar, Func<Configuration, bool> worthwhile)
    {
        var open = new Stack<(Configuration At, ImmutableStack<string> Words)>();
        open.Push((grammar.Automaton.Start, []));
        while (open.TryPop(out var state))
        {
            Moves moves = grammar.Automaton.Next(state.At);
            foreach (SemanticValue meaning in moves.Meanings)
            {
                yield return new(string.Join(' ', state.Words.Reverse()), meaning);
            }

            for (int i = moves.Arcs.Length - 1; i >= 0; i--)
            {
                Arc arc = moves.Arcs[i];
                if (worthwhile(arc.Target))
                {
                    open.Push((arc.Target, state.Words.Push(arc.Word)));
                }
            }
        }
    }

    private static void Draw(Expansion e, GrammarFacts facts, Random random, List<string> words)
    {
        switch (e)
        {
            case WordExpansion word:
                words.Add(word.Word);
                break;
            case RuleExpansion rule:
                Draw(rule.Target.Body, facts, random, words);
                break;
            case SequenceExpansion sequence:
                foreach (Expansion part in sequence.Parts)
                {
                    Draw(part, facts, random, words);
                }

                break;
            case AlternativesExpansion alternatives:
                Draw(Choose(alternatives, facts, random), facts, random, words);
                break;
            case RepeatExpansion repeat when facts.CanEnd(repeat.Body):
                for (int i = 0; (i == 0 && repeat.AtLeastOnce) || ((i == 0 || repeat.More) && i < 8 && random.NextDouble() < 0.5); i++)
                {
                    Draw(repeat.Body, facts, random, words);
                }

                break;
        }
    }

    private static Expansion Choose(AlternativesExpansion alternatives, GrammarFacts facts, Random random)
    {
        var open = alternatives.Choices.Zip(alternatives.Weights).Where(c => facts.CanEnd(c.First)).ToList();
        double at = random.NextDouble() * open.Sum(c => c.Second);
        int choice = 0;
        while (choice < open.Count - 1 && (at -= open[choice].Second) >= 0)
        {
            choice++;
        }

        return open[choice].First;
    }
}
