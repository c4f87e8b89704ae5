using HandsFree.Language.Grammars;

namespace HandsFree.Language.Help;

/// <summary>Short example sentences of a grammar, for "options" and for help texts.</summary>
public static class Examples
{
    /// <summary>A few sentences, always the same: what the grammar's documentation comments give as <c>@example</c>, a first one of
    /// every kind of sentence before a second one of any; for a kind without such a comment its likeliest sentence.</summary>
    /// <param name="grammar">The grammar.</param>
    /// <param name="most">At most so many.</param>
    public static IReadOnlyList<string> Of(Grammar grammar, int most = 8)
    {
        var kinds = new List<IReadOnlyList<string>>();
        Collect(grammar.Root.Body, grammar, [], kinds);
        int longest = kinds.Count == 0 ? 0 : kinds.Max(k => k.Count);
        return [.. Enumerable.Range(0, longest).SelectMany(turn => kinds.Where(k => k.Count > turn).Select(k => k[turn])).Distinct().Take(most)];
    }

    private static void Collect(Expansion e, Grammar grammar, HashSet<Rule> open, List<IReadOnlyList<string>> kinds)
    {
        switch (e)
        {
            case AlternativesExpansion alternatives:
                foreach (Expansion choice in alternatives.Choices.Where(grammar.Facts.CanEnd))
                {
                    Collect(choice, grammar, open, kinds);
                }

                break;
            case RuleExpansion { Target: { Examples.Count: > 0 } rule }:
                kinds.Add(rule.Examples);
                break;
            case RuleExpansion { Target: { Body: RuleExpansion or AlternativesExpansion } rule } when open.Add(rule):
                Collect(rule.Body, grammar, open, kinds);
                break;
            default:
                string likeliest = Likeliest.Sentence(e, grammar.Facts);
                if (likeliest.Length > 0)
                {
                    kinds.Add([likeliest]);
                }

                break;
        }
    }
}
