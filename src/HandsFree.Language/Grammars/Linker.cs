using System.Collections.Immutable;

namespace HandsFree.Language.Grammars;

/// <summary>Resolves imports and rule names of a grammar and of all that it imports, then has the rules checked.</summary>
internal sealed class Linker
{
    private readonly Func<string, string?> import;
    private readonly Dictionary<string, JsgfFile> files = [];

    private Linker(Func<string, string?> import) => this.import = import;

    public static Grammar Link(string text, string fileName, string? ruleName, Func<string, string?> import)
    {
        var linker = new Linker(import);
        JsgfFile main = linker.Add(JsgfParser.Parse(text, fileName));
        linker.CheckImports();
        Rule root = Root(main, fileName, ruleName);
        List<Rule> rules = [.. linker.files.Values.SelectMany(f => f.Rules.Values)];
        foreach (Rule rule in rules)
        {
            linker.Resolve(rule);
        }

        if (!rules.Contains(root))
        {
            linker.Resolve(root);
            rules.Add(root);
        }

        Nesting.Check(rules);
        var facts = new GrammarFacts(rules);
        var check = new GrammarCheck(facts);
        rules.ForEach(check.Rule);
        check.Root(root);
        var reached = new List<Rule>();
        Reach(root, reached);
        string name = ruleName is null || ruleName == main.Name ? main.Name : $"{main.Name}#{ruleName}";
        return new(name, root, [.. reached], facts);
    }

    private JsgfFile Add(JsgfFile file)
    {
        files[file.Name] = file;
        if (files.Count > Nesting.MostFiles)
        {
            throw new GrammarException(new SourcePosition($"{file.Name}.jsgf", 1, 1), $"the grammar imports more than {Nesting.MostFiles} others; put some together");
        }

        foreach (var (name, at) in file.Imports)
        {
            string grammar = Parts(name).Grammar ?? throw new GrammarException(at, $"expected <grammar.rule> or <grammar.*>, found <{name}>");
            if (files.ContainsKey(grammar))
            {
                continue;
            }

            string text = import(grammar) ?? throw new GrammarException(at, $"no grammar '{grammar}' beside this one; expected a file {grammar}.jsgf");
            JsgfFile imported = JsgfParser.Parse(text, grammar + ".jsgf");
            if (imported.Name != grammar)
            {
                throw new GrammarException(at, $"{grammar}.jsgf names itself '{imported.Name}'; expected 'grammar {grammar};' in it");
            }

            Add(imported);
        }

        return file;
    }

    private void CheckImports()
    {
        foreach (var (name, at) in files.Values.SelectMany(f => f.Imports))
        {
            var (grammar, rule) = Parts(name);
            Rule? wanted = files[grammar!].Rules.GetValueOrDefault(rule);
            if (rule != "*" && wanted is not { IsPublic: true })
            {
                throw new GrammarException(at, wanted is null
                    ? $"grammar '{grammar}' has no rule <{rule}>; import a public rule of it, or <{grammar}.*>"
                    : $"<{rule}> of grammar '{grammar}' is not public; write 'public <{rule}> = …' there, or import another");
            }
        }
    }

    private static Rule Root(JsgfFile file, string fileName, string? ruleName)
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

    private void Resolve(Rule within)
    {
        foreach (Expansion node in within.Body.Nodes())
        {
            switch (node)
            {
                case TagExpansion t:
                    within.Used.UnionWith(t.Program.References);
                    within.Computed.UnionWith(t.Program.Computed);
                    break;
                case RuleExpansion reference:
                    reference.Target = Find(reference, files[within.Grammar]);
                    break;
            }
        }
    }

    private Rule Find(RuleExpansion reference, JsgfFile from)
    {
        var (grammar, name) = Parts(reference.Name);
        if ((grammar is null || grammar == from.Name) && from.Rules.TryGetValue(name, out Rule? local))
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

    private static void Reach(Rule rule, List<Rule> reached)
    {
        if (!reached.Contains(rule))
        {
            reached.Add(rule);
            Reach(rule.Body, reached);
        }
    }

    private static void Reach(Expansion e, List<Rule> reached)
    {
        switch (e)
        {
            case SequenceExpansion s:
                s.Parts.ToList().ForEach(p => Reach(p, reached));
                break;
            case AlternativesExpansion a:
                a.Choices.ToList().ForEach(c => Reach(c, reached));
                break;
            case RepeatExpansion r:
                Reach(r.Body, reached);
                break;
            case RuleExpansion r:
                Reach(r.Target, reached);
                break;
        }
    }

    private static (string? Grammar, string Rule) Parts(string name)
    {
        string[] parts = name.Split('.');
        return (parts.Length > 1 ? parts[^2] : null, parts[^1]);
    }
}
