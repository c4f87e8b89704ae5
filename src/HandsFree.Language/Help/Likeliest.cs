using HandsFree.Language.Grammars;

namespace HandsFree.Language.Help;

/// <summary>The likeliest sentence of a part of a grammar: of a rule its example, of alternatives the heaviest (of equal ones the
/// shortest, then the first), nothing optional, repetitions once.</summary>
internal static class Likeliest
{
    /// <summary>The sentence, and whether a rule's example is in it.</summary>
    public static (string Words, bool IsDocumented) Sentence(Expansion e, GrammarFacts facts) => Find(e, facts, []) ?? ("", false);

    /// <summary>The words, or null where only a way back into an open rule would be left.</summary>
    private static (string Words, bool IsDocumented)? Find(Expansion e, GrammarFacts facts, HashSet<Rule> open)
    {
        switch (e)
        {
            case WordExpansion word:
                return (word.Word, false);
            case RuleExpansion { Target: { Examples: [var example, ..] } }:
                return (example, true);
            case RuleExpansion { Target: var rule }:
                if (!open.Add(rule))
                {
                    return null;
                }

                var inner = Find(rule.Body, facts, open);
                open.Remove(rule);
                return inner;
            case SequenceExpansion sequence:
                var parts = sequence.Parts.Select(p => Find(p, facts, open)).ToList();
                return parts.Contains(null)
                    ? null
                    : (string.Join(' ', parts.Select(p => p!.Value.Words).Where(w => w.Length > 0)), parts.Any(p => p!.Value.IsDocumented));
            case AlternativesExpansion alternatives:
                return alternatives.Choices.Zip(alternatives.Weights)
                    .Where(c => facts.CanEnd(c.First))
                    .Select(c => (Found: Find(c.First, facts, open), Weight: c.Second))
                    .Where(c => c.Found is not null)
                    .OrderByDescending(c => c.Weight)
                    .ThenBy(c => c.Found!.Value.Words.Count(letter => letter == ' '))
                    .FirstOrDefault().Found;
            case RepeatExpansion { AtLeastOnce: true } repeat:
                return Find(repeat.Body, facts, open);
            default:
                return ("", false);
        }
    }
}
