using HandsFree.Language.Grammars;

namespace HandsFree.Speech.Vosk;

/// <summary>Which word can follow which in a grammar: all that a model of word pairs can learn of it. Found bottom up over the
/// grammar's tree (first words, last words, whether nothing may be said).</summary>
internal sealed class WordPairs
{
    private readonly HashSet<(string, string)> pairs = [];
    private readonly Dictionary<Rule, Part> rules = [];

    private WordPairs()
    {
    }

    /// <summary>All pairs that stand side by side in some sentence, in alphabetical order.</summary>
    internal static IReadOnlyList<(string First, string Second)> Of(Grammar grammar)
    {
        var found = new WordPairs();
        int before;
        do
        {
            // A rule that contains itself needs more than one round until nothing new comes.
            before = found.Size;
            found.rules[grammar.Root] = found.Visit(grammar.Root.Body);
            foreach (Rule rule in grammar.Rules)
            {
                found.rules[rule] = found.Visit(rule.Body);
            }
        }
        while (found.Size != before);

        return [.. found.pairs.OrderBy(p => p.Item1, StringComparer.Ordinal).ThenBy(p => p.Item2, StringComparer.Ordinal)];
    }

    private int Size => pairs.Count + rules.Values.Sum(p => p.First.Count + p.Last.Count + (p.CanBeEmpty ? 1 : 0));

    private Part Visit(Expansion e) => e switch
    {
        WordExpansion word => new([word.Word], [word.Word], false),
        RuleExpansion rule => rules.GetValueOrDefault(rule.Target, Part.Nothing),
        SequenceExpansion sequence => sequence.Parts.Select(Visit).Aggregate(Part.Empty, Join),
        AlternativesExpansion alternatives => alternatives.Choices.Select(Visit).Aggregate(Either),
        RepeatExpansion repeat => Repeat(Visit(repeat.Body), repeat),
        _ => Part.Empty,
    };

    private Part Join(Part a, Part b)
    {
        foreach (string last in a.Last)
        {
            foreach (string first in b.First)
            {
                pairs.Add((last, first));
            }
        }

        return new(
            a.CanBeEmpty ? [.. a.First, .. b.First] : a.First,
            b.CanBeEmpty ? [.. a.Last, .. b.Last] : b.Last,
            a.CanBeEmpty && b.CanBeEmpty);
    }

    private Part Repeat(Part body, RepeatExpansion repeat)
    {
        Part part = repeat.More ? Join(body, body) : body;
        return new([.. part.First, .. body.First], [.. part.Last, .. body.Last], !repeat.AtLeastOnce || body.CanBeEmpty);
    }

    private static Part Either(Part a, Part b) => new([.. a.First, .. b.First], [.. a.Last, .. b.Last], a.CanBeEmpty || b.CanBeEmpty);

    private sealed record Part(HashSet<string> First, HashSet<string> Last, bool CanBeEmpty)
    {
        /// <summary>Can be said by saying nothing.</summary>
        internal static Part Empty { get; } = new([], [], true);

        /// <summary>Not known yet.</summary>
        internal static Part Nothing { get; } = new([], [], false);
    }
}
