using System.Runtime.CompilerServices;

namespace HandsFree.Language.Grammars;

/// <summary>Bounds of what is read: a grammar is walked by calls within calls, and one that is nested without end would end the process
/// instead of giving an error.</summary>
internal sealed class Nesting
{
    /// <summary>A grammar file in characters; the largest of the program's has some 5,000.</summary>
    public const int MostCharacters = 1_000_000;

    /// <summary>Groups within groups, and rules that lead to rules, together.</summary>
    public const int Deepest = 200;

    /// <summary>Rules of a grammar with all that it imports.</summary>
    public const int MostRules = 2_000;

    /// <summary>Files of a grammar with all that it imports.</summary>
    public const int MostFiles = 100;

    private readonly Dictionary<Rule, int> known = [];
    private readonly HashSet<Rule> open = [];

    /// <summary>Refuses text that is too long.</summary>
    public static void CheckLength(string text, string file)
    {
        if (text.Length > MostCharacters)
        {
            throw new GrammarException(new SourcePosition(file, 1, 1), $"the file is longer than {MostCharacters:N0} characters; cut it into grammars that import one another");
        }
    }

    /// <summary>Refuses linked rules that lead too deep.</summary>
    public static void Check(IReadOnlyCollection<Rule> rules)
    {
        if (rules.Count > MostRules)
        {
            throw new GrammarException(rules.First().At, $"the grammar has {rules.Count:N0} rules with all that it imports; {MostRules:N0} are the most");
        }

        Nesting nesting = new();
        foreach (Rule rule in rules)
        {
            nesting.DepthOf(rule);
        }
    }

    // A rule that leads back to itself counts once: it is walked with a memory of where one has been.
    private int DepthOf(Rule rule)
    {
        if (known.TryGetValue(rule, out int depth) || !open.Add(rule))
        {
            return depth;
        }

        depth = RuntimeHelpers.TryEnsureSufficientExecutionStack() ? 1 + DepthOf(rule.Body) : Deepest + 1;
        if (depth > Deepest)
        {
            throw new GrammarException(rule.At, $"<{rule.Name}> leads more than {Deepest} groups and rules deep; make it flatter");
        }

        open.Remove(rule);
        return known[rule] = depth;
    }

    private int DepthOf(Expansion expansion) => expansion switch
    {
        RuleExpansion r => DepthOf(r.Target),
        SequenceExpansion s => s.Parts.Select(DepthOf).DefaultIfEmpty().Max(),
        AlternativesExpansion a => 1 + a.Choices.Select(DepthOf).DefaultIfEmpty().Max(),
        RepeatExpansion r => 1 + DepthOf(r.Body),
        _ => 0,
    };
}
