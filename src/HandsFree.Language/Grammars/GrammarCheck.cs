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
        HashSet<string> references = [.. rule.Body.Nodes().OfType<RuleExpansion>().Select(r => r.Target.Name)];
        foreach (Expansion node in rule.Body.Nodes())
        {
            Refuse(node, rule, references);
        }
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

    private void Refuse(Expansion node, Rule within, HashSet<string> references)
    {
        switch (node)
        {
            case RepeatExpansion { More: true } r when facts.CanBeEmpty(r.Body) && facts.HasTag(r.Body):
                throw new GrammarException(within.At, $"<{within.Name}> repeats a tag without a word, which never ends; let each repetition say at least one word");
            case TagExpansion t when t.Program.References.FirstOrDefault(name => name.Length > 0 && !references.Contains(name)) is { } missing:
                throw new GrammarException(t.At, $"${missing} has no value: <{within.Name}> does not refer to a rule <{missing}>");
        }
    }
}
