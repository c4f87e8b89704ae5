using System.Collections.Immutable;

namespace HandsFree.Language.Grammars;

/// <summary>Resolves imports and rule names, and refuses what no engine can follow: unknown rules and left recursion.</summary>
internal sealed class Linker
{
    private readonly Func<string, string?> import;
    private readonly Dictionary<string, JsgfFile> files = [];
    private readonly List<Rule> reached = [];

    private Linker(Func<string, string?> import) => this.import = import;

    public static Grammar Link(string text, string fileName, string? ruleName, Func<string, string?> import)
    {
        var linker = new Linker(import);
        JsgfFile main = linker.Add(text, fileName);
        Rule root = linker.Root(main, fileName, ruleName);
        linker.Reach(root);
        foreach (Rule rule in linker.reached)
        {
            linker.RefuseLeftRecursion(rule, []);
        }

        bool hasTags = linker.reached.Any(r => AnyTag(r.Body));
        string name = ruleName is null || ruleName == main.Name ? main.Name : $"{main.Name}#{ruleName}";
        return new(name, root, [.. linker.reached], hasTags);
    }

    private JsgfFile Add(string text, string fileName)
    {
        JsgfFile file = JsgfParser.Parse(text, fileName);
        files[file.Name] = file;
        foreach (var (name, at) in file.Imports)
        {
            string grammar = Parts(name).Grammar ?? throw new GrammarException(at, $"expected <grammar.rule> or <grammar.*>, found <{name}>");
            if (!files.ContainsKey(grammar))
            {
                string imported = import(grammar) ?? throw new GrammarException(at, $"no grammar '{grammar}' beside this one; expected a file {grammar}.jsgf");
                Add(imported, grammar + ".jsgf");
            }
        }

        return file;
    }

    private Rule Root(JsgfFile file, string fileName, string? ruleName)
    {
        var start = new SourcePosition(fileName, 1, 1);
        if (ruleName is not null)
        {
            return file.Rules.GetValueOrDefault(ruleName) ?? throw new GrammarException(start, $"expected a rule <{ruleName}>; there is none");
        }

        Rule[] publics = [.. file.Rules.Values.Where(r => r.IsPublic)];
        return publics.Length switch
        {
            0 => throw new GrammarException(start, "expected at least one public rule: 'public <name> = …;'"),
            1 => publics[0],
            _ => new Rule(file.Name, "any_public_rule", true, AnyOf(publics), start),
        };
    }

    private static AlternativesExpansion AnyOf(Rule[] rules) =>
        new([.. rules.Select(r => new RuleExpansion(r.Name, r.At))], [.. rules.Select(_ => 1.0)]);

    private void Reach(Rule rule)
    {
        if (reached.Contains(rule))
        {
            return;
        }

        reached.Add(rule);
        Visit(rule.Body, rule);
    }

    private void Visit(Expansion e, Rule within)
    {
        switch (e)
        {
            case SequenceExpansion s:
                foreach (Expansion part in s.Parts)
                {
                    Visit(part, within);
                }

                break;
            case AlternativesExpansion a:
                foreach (Expansion choice in a.Choices)
                {
                    Visit(choice, within);
                }

                break;
            case RepeatExpansion r:
                Visit(r.Body, within);
                break;
            case TagExpansion t:
                within.Used.UnionWith(t.Program.References);
                break;
            case RuleExpansion reference:
                reference.Target = Find(reference, files[within.Grammar]);
                Reach(reference.Target);
                break;
        }
    }

    private Rule Find(RuleExpansion reference, JsgfFile from)
    {
        var (grammar, name) = Parts(reference.Name);
        if (grammar is null && from.Rules.TryGetValue(name, out Rule? local))
        {
            return local;
        }

        foreach (var (imported, _) in from.Imports)
        {
            var (file, rule) = Parts(imported);
            if ((grammar is null || grammar == file) && (rule == "*" || rule == name)
                && files[file!].Rules.TryGetValue(name, out Rule? found) && found.IsPublic)
            {
                return found;
            }
        }

        throw new GrammarException(reference.At, $"<{reference.Name}> is not defined here and no import brings it; define it, or import a public rule of that name");
    }

    private void RefuseLeftRecursion(Rule rule, ImmutableHashSet<Rule> open)
    {
        if (open.Contains(rule))
        {
            throw new GrammarException(rule.At, $"<{rule.Name}> begins with itself; write a repetition with * or + instead");
        }

        foreach (Rule first in FirstRules(rule.Body).Rules)
        {
            RefuseLeftRecursion(first, open.Add(rule));
        }
    }

    private static (IEnumerable<Rule> Rules, bool CanBeEmpty) FirstRules(Expansion e)
    {
        switch (e)
        {
            case RuleExpansion r:
                return ([r.Target], false);
            case RepeatExpansion r:
                return (FirstRules(r.Body).Rules, !r.AtLeastOnce);
            case AlternativesExpansion a:
                var parts = a.Choices.Select(FirstRules).ToList();
                return (parts.SelectMany(p => p.Rules), parts.Any(p => p.CanBeEmpty));
            case SequenceExpansion s:
                var rules = new List<Rule>();
                foreach (Expansion part in s.Parts)
                {
                    var (first, canBeEmpty) = FirstRules(part);
                    rules.AddRange(first);
                    if (!canBeEmpty)
                    {
                        return (rules, false);
                    }
                }

                return (rules, true);
            default:
                return ([], e is TagExpansion);
        }
    }

    private static bool AnyTag(Expansion e) => e switch
    {
        TagExpansion => true,
        SequenceExpansion s => s.Parts.Any(AnyTag),
        AlternativesExpansion a => a.Choices.Any(AnyTag),
        RepeatExpansion r => AnyTag(r.Body),
        _ => false,
    };

    private static (string? Grammar, string Rule) Parts(string name)
    {
        string[] parts = name.Split('.');
        return (parts.Length > 1 ? parts[^2] : null, parts[^1]);
    }
}
