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
        Draw(grammar.Root.Body, random, words);
        return string.Join(' ', words);
    }

    /// <summary>All sentences, in the order of the grammar; endless for a grammar that repeats, so take what you need.</summary>
    public static IEnumerable<Sentence> All(Grammar grammar) => Walk(grammar, _ => true);

    /// <summary>All sentences that mean one value.</summary>
    public static IEnumerable<Sentence> For(Grammar grammar, SemanticValue wanted) =>
        Walk(grammar, c => CanStillMean(c.Frame, wanted)).Where(s => s.Meaning.Equals(wanted));

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

    /// <summary>Whether the fields that are set so far fit the wanted record; a list may still grow.</summary>
    private static bool CanStillMean(Frame? frame, SemanticValue wanted)
    {
        if (wanted is not SemanticRecord record)
        {
            return true;
        }

        for (; frame is not null; frame = frame.Parent)
        {
            if (!Fits(frame.Fields, record) || (frame.Passed is SemanticRecord passed && !Fits(passed, record))
                || (frame.Result is SemanticList some && !record.Fields.Any(f => f.Value is SemanticList && Fits(some, f.Value))))
            {
                return false;
            }
        }

        return true;
    }

    private static bool Fits(SemanticRecord soFar, SemanticRecord wanted) => soFar.Fields.All(f => Fits(f.Value, wanted[f.Key]));

    private static bool Fits(SemanticValue soFar, SemanticValue? wanted) => (soFar, wanted) switch
    {
        (SemanticList some, SemanticList all) => some.Items.Length <= all.Items.Length && some.Items.SequenceEqual(all.Items.Take(some.Items.Length)),
        _ => soFar.Equals(wanted),
    };

    private static void Draw(Expansion e, Random random, List<string> words)
    {
        switch (e)
        {
            case WordExpansion word:
                words.Add(word.Word);
                break;
            case RuleExpansion rule:
                Draw(rule.Target.Body, random, words);
                break;
            case SequenceExpansion sequence:
                foreach (Expansion part in sequence.Parts)
                {
                    Draw(part, random, words);
                }

                break;
            case AlternativesExpansion alternatives:
                double at = random.NextDouble() * alternatives.Weights.Sum();
                int choice = 0;
                while (choice < alternatives.Choices.Length - 1 && (at -= alternatives.Weights[choice]) >= 0)
                {
                    choice++;
                }

                Draw(alternatives.Choices[choice], random, words);
                break;
            case RepeatExpansion repeat:
                for (int i = 0; (i == 0 && repeat.AtLeastOnce) || ((i == 0 || repeat.More) && i < 8 && random.NextDouble() < 0.5); i++)
                {
                    Draw(repeat.Body, random, words);
                }

                break;
        }
    }
}
