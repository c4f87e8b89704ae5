using HandsFree.Language.Grammars;

namespace HandsFree.Language.Help;

/// <summary>The likeliest sentence of a part of a grammar: of alternatives the heaviest (of equal ones the shortest, then the first),
/// nothing optional, repetitions once.</summary>
internal static class Likeliest
{
    public static string Sentence(Expansion e, GrammarFacts facts) => string.Join(' ', Words(e, facts, []) ?? []);

    /// <summary>The words, or null where only a way back into an open rule would be left.</summary>
    private static IReadOnlyList<string>? Words(Expansion e, GrammarFacts facts, HashSet<Rule> open)
    {
        switch (e)
        {
            case WordExpansion word:
                return [word.Word];
            case RuleExpansion { Target: var rule }:
                if (!open.Add(rule))
                {
                    return null;
                }

                IReadOnlyList<string>? inner = Words(rule.Body, facts, open);
                open.Remove(rule);
                return inner;
            case SequenceExpansion sequence:
                var parts = sequence.Parts.Select(p => Words(p, facts, open)).ToList();
                return parts.Contains(null) ? null : [.. parts.SelectMany(p => p!)];
            case AlternativesExpansion alternatives:
                return alternatives.Choices.Zip(alternatives.Weights)
                    .Where(c => facts.CanEnd(c.First))
                    .Select(c => (Words: Words(c.First, facts, open), Weight: c.Second))
                    .Where(c => c.Words is not null)
                    .OrderByDescending(c => c.Weight)
                    .ThenBy(c => c.Words!.Count)
                    .FirstOrDefault().Words;
            case RepeatExpansion { AtLeastOnce: true } repeat:
                return Words(repeat.Body, facts, open);
            default:
                return [];
        }
    }
}
