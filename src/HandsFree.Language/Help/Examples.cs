using HandsFree.Language.Grammars;

namespace HandsFree.Language.Help;

/// <summary>Short example sentences of a grammar, for "options" and for help texts.</summary>
public static class Examples
{
    /// <summary>A few sentences, always the same: what the documentation comments of its rules give as <c>@example</c>, a first one of
    /// every kind of sentence before a second one of any. Kinds without an example stay unsaid; only where no kind has one, the
    /// likeliest sentence of each is given.</summary>
    /// <param name="grammar">The grammar.</param>
    /// <param name="most">At most so many.</param>
    public static IReadOnlyList<string> Of(Grammar grammar, int most = 8)
    {
        var kinds = new List<IReadOnlyList<string>>();
        Collect(new RuleExpansion(grammar.Root.Name, grammar.Root.At) { Target = grammar.Root }, grammar.Facts, true, [], kinds);
        if (kinds.Count == 0)
        {
            Collect(grammar.Root.Body, grammar.Facts, false, [grammar.Root], kinds);
        }

        int longest = kinds.Count == 0 ? 0 : kinds.Max(k => k.Count);
        return [.. Enumerable.Range(0, longest).SelectMany(turn => kinds.Where(k => k.Count > turn).Select(k => k[turn])).Distinct().Take(most)];
    }

    private static void Collect(Expansion e, GrammarFacts facts, bool documented, HashSet<Rule> open, List<IReadOnlyList<string>> kinds)
    {
        switch (e)
        {
            case AlternativesExpansion alternatives:
                foreach (Expansion choice in alternatives.Choices.Where(facts.CanEnd))
                {
                    Collect(choice, facts, documented, open, kinds);
                }

                break;
            case RuleExpansion { Target: { Examples.Count: > 0 } rule }:
                kinds.Add(rule.Examples);
                break;
            case RuleExpansion { Target: { Body: RuleExpansion or AlternativesExpansion } rule } when open.Add(rule):
                Collect(rule.Body, facts, documented, open, kinds);
                break;
            default:
                var (sentence, isDocumented) = Likeliest.Sentence(e, facts);
                if (sentence.Length > 0 && (isDocumented || !documented))
                {
                    kinds.Add([sentence]);
                }

                break;
        }
    }
}
