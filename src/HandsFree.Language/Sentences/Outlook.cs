using HandsFree.Language.Grammars;

namespace HandsFree.Language.Sentences;

/// <summary>Which fields parts of a grammar may still set.</summary>
internal sealed class Outlook
{
    private readonly Dictionary<(Expansion, Rule), FieldSets> known = [];
    private readonly Dictionary<Rule, bool> valued = [];
    private readonly Dictionary<Rule, bool> loose = [];
    private readonly Dictionary<Rule, FieldSets> open = [];

    /// <summary>What a node sets in the record of the rule that it stands in.</summary>
    public FieldSets Of(Expansion e, Rule within)
    {
        if (!known.TryGetValue((e, within), out FieldSets? sets))
        {
            sets = Find(e, within);
            if (open.Count == 0)
            {
                known.Add((e, within), sets);
            }
        }

        return sets;
    }

    /// <summary>Whether a tag of the rule sets its value as a whole, so that fields may be lost.</summary>
    public bool SetsValue(Rule rule)
    {
        if (!valued.TryGetValue(rule, out bool sets))
        {
            sets = SetsValue(rule.Body);
            valued.Add(rule, sets);
        }

        return sets;
    }

    private FieldSets Find(Expansion e, Rule within) => e switch
    {
        TagExpansion t => t.Program.Fields.Aggregate(FieldSets.None, (sum, f) => sum.Then(FieldSets.One(f.Name, f.Constant, f.IsSure))),
        RuleExpansion r when within.Used.Contains(r.Target.Name) => OfRule(r.Target).Optional().PassedOn(false),
        RuleExpansion r => OfRule(r.Target).PassedOn(MayBeNoRecord(r.Target)),
        SequenceExpansion s => s.Parts.Aggregate(FieldSets.None, (sum, p) => sum.Then(Of(p, within))),
        AlternativesExpansion { Choices: [var first, .. var more] } => more.Aggregate(Of(first, within), (sum, c) => sum.Or(Of(c, within))),
        RepeatExpansion r => r.AtLeastOnce ? Of(r.Body, within) : Of(r.Body, within).Optional(),
        _ => FieldSets.None,
    };

    /// <summary>Whether the rule's value may be something else than a record.</summary>
    public bool MayBeNoRecord(Rule rule)
    {
        if (!loose.TryGetValue(rule, out bool may))
        {
            loose.Add(rule, true);
            may = SetsValue(rule) || (OfRule(rule).Own.IsEmpty && References(rule.Body).Any(MayBeNoRecord));
            loose[rule] = may;
        }

        return may;
    }

    private static IEnumerable<Rule> References(Expansion e) => e.Nodes().OfType<RuleExpansion>().Select(r => r.Target);

    private FieldSets OfRule(Rule rule)
    {
        if (open.TryGetValue(rule, out FieldSets? soFar))
        {
            return soFar;
        }

        FieldSets before;
        FieldSets now = FieldSets.None;
        do
        {
            before = now;
            open[rule] = now;
            now = Of(rule.Body, rule);
            now = SetsValue(rule) ? now.Optional() : now;
        }
        while (now.May.Count > before.May.Count);

        open.Remove(rule);
        return now;
    }

    private static bool SetsValue(Expansion e) => e.Nodes().OfType<TagExpansion>().Any(t => t.Program.SetsValue);
}
