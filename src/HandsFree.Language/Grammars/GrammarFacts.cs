namespace HandsFree.Language.Grammars;

/// <summary>What follows from a grammar's rules: which can be said without a word, which come to an end, which carry tags.</summary>
internal sealed class GrammarFacts
{
    private readonly HashSet<Rule> empty;
    private readonly HashSet<Rule> ending;
    private readonly HashSet<Rule> tagged;

    public GrammarFacts(IReadOnlyCollection<Rule> rules)
    {
        empty = Grow(rules, (e, known) => CanBeEmpty(e, known));
        ending = Grow(rules, (e, known) => CanEnd(e, known));
        tagged = Grow(rules, (e, known) => HasTag(e, known));
    }

    /// <summary>Whether it can be said without a word.</summary>
    public bool CanBeEmpty(Expansion e) => CanBeEmpty(e, empty);

    /// <summary>Whether a sentence can pass it: not so for VOID and for a rule that always leads to itself.</summary>
    public bool CanEnd(Expansion e) => CanEnd(e, ending);

    /// <summary>Whether there is a tag in it or in a rule that it refers to.</summary>
    public bool HasTag(Expansion e) => HasTag(e, tagged);

    private static HashSet<Rule> Grow(IReadOnlyCollection<Rule> rules, Func<Expansion, HashSet<Rule>, bool> holds)
    {
        var known = new HashSet<Rule>();
        int before;
        do
        {
            before = known.Count;
            known.UnionWith(rules.Where(r => holds(r.Body, known)));
        }
        while (known.Count > before);

        return known;
    }

    private static bool CanBeEmpty(Expansion e, HashSet<Rule> known) => e switch
    {
        TagExpansion => true,
        RuleExpansion r => known.Contains(r.Target),
        SequenceExpansion s => s.Parts.All(p => CanBeEmpty(p, known)),
        AlternativesExpansion a => a.Choices.Any(c => CanBeEmpty(c, known)),
        RepeatExpansion r => !r.AtLeastOnce || CanBeEmpty(r.Body, known),
        _ => false,
    };

    private static bool CanEnd(Expansion e, HashSet<Rule> known) => e switch
    {
        RuleExpansion r => known.Contains(r.Target),
        SequenceExpansion s => s.Parts.All(p => CanEnd(p, known)),
        AlternativesExpansion a => a.Choices.Any(c => CanEnd(c, known)),
        RepeatExpansion r => !r.AtLeastOnce || CanEnd(r.Body, known),
        _ => true,
    };

    private static bool HasTag(Expansion e, HashSet<Rule> known) => e switch
    {
        TagExpansion => true,
        RuleExpansion r => known.Contains(r.Target),
        SequenceExpansion s => s.Parts.Any(p => HasTag(p, known)),
        AlternativesExpansion a => a.Choices.Any(c => HasTag(c, known)),
        RepeatExpansion r => HasTag(r.Body, known),
        _ => false,
    };
}
