namespace HandsFree.Language.Grammars;

/// <summary>Refuses what is well formed and linked but can't be walked: rules that begin with themselves, repetitions that never
/// end, tags that use a rule which isn't there, and a grammar in which nothing can be said.</summary>
internal sealed class GrammarCheck(GrammarFacts facts)
{
    private readonly HashSet<Rule> done = [];
    private readonly HashSet<Rule> open = [];

    public void Rule(Rule rule)
    {
        RefuseLeftRecursion(rule);
        var references = new HashSet<string>();
        Collect(rule.Body, references);
        Visit(rule.Body, rule, references);
    }

    public void Root(Rule root)
    {
        if (!facts.CanEnd(root.Body))
        {
            throw new GrammarException(root.At, $"nothing can be said: every way through <{root.Name}> meets <VOID> or leads back to itself; give it one that ends");
        }
    }

    private void RefuseLeftRecursion(Rule rule)
    {
        if (open.Contains(rule))
        {
            throw new GrammarException(rule.At, $"<{rule.Name}> begins with itself; write a repetition with * or + instead");
        }

        if (!done.Add(rule))
        {
            return;
        }

        open.Add(rule);
        foreach (Rule first in FirstRules(rule.Body))
        {
            RefuseLeftRecursion(first);
        }

        open.Remove(rule);
    }

    private IEnumerable<Rule> FirstRules(Expansion e) => e switch
    {
        RuleExpansion r => [r.Target],
        RepeatExpansion r => FirstRules(r.Body),
        AlternativesExpansion a => a.Choices.SelectMany(FirstRules),
        SequenceExpansion s => s.Parts.Take(1 + s.Parts.TakeWhile(facts.CanBeEmpty).Count()).SelectMany(FirstRules),
        _ => [],
    };

    private void Visit(Expansion e, Rule within, HashSet<string> references)
    {
        switch (e)
        {
            case SequenceExpansion s:
                foreach (Expansion part in s.Parts)
                {
                    Visit(part, within, references);
                }

                break;
            case AlternativesExpansion a:
                foreach (Expansion choice in a.Choices)
                {
                    Visit(choice, within, references);
                }

                break;
            case RepeatExpansion { More: true } r when facts.CanBeEmpty(r.Body) && facts.HasTag(r.Body):
                throw new GrammarException(within.At, $"<{within.Name}> repeats a tag without a word, which never ends; let each repetition say at least one word");
            case RepeatExpansion r:
                Visit(r.Body, within, references);
                break;
            case TagExpansion t:
                string? missing = t.Program.References.FirstOrDefault(name => name.Length > 0 && !references.Contains(name));
                if (missing is not null)
                {
                    throw new GrammarException(t.At, $"${missing} has no value: <{within.Name}> does not refer to a rule <{missing}>");
                }

                break;
        }
    }

    private static void Collect(Expansion e, HashSet<string> references)
    {
        switch (e)
        {
            case RuleExpansion r:
                references.Add(r.Target.Name);
                break;
            case SequenceExpansion s:
                foreach (Expansion part in s.Parts)
                {
                    Collect(part, references);
                }

                break;
            case AlternativesExpansion a:
                foreach (Expansion choice in a.Choices)
                {
                    Collect(choice, references);
                }

                break;
            case RepeatExpansion r:
                Collect(r.Body, references);
                break;
        }
    }
}
