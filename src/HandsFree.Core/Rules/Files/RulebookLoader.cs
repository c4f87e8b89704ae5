using System.Text;
using HandsFree.Core.Files;
using HandsFree.Core.Rules.Evaluation;

namespace HandsFree.Core.Rules.Files;

/// <summary>Reads rule files into a rulebook, or into the list of all that is wrong with them.</summary>
internal static class RulebookLoader
{
    public static RulebookLoading Load(IReadOnlyList<RuleFile> defaults, RuleFile? home)
    {
        var errors = new List<FileError>();
        List<ObjectReader> files =
        [
            .. defaults.Select(f => (f.Name, Node: LocatedJson.Read(f.Name, Encoding.UTF8.GetBytes(f.Text), errors)))
                .Where(f => f.Node is not null)
                .Select(f => new ObjectReader(f.Node!, f.Name, errors)),
        ];
        var instructions = new Dictionary<string, RecheckInstruction>(StringComparer.Ordinal);
        foreach (var file in files)
        {
            InstructionParser.ParseInto(instructions, file);
        }

        var parser = new RuleParser(instructions);
        var rules = new List<Rule>();
        foreach (var file in files)
        {
            Group(file, parser, rules);
        }

        if (home is not null && LocatedJson.Read(home.Name, Encoding.UTF8.GetBytes(home.Text), errors) is { } node)
        {
            rules = HomeFile.Apply(new(node, home.Name, errors), parser, rules);
        }

        return errors.Count > 0
            ? new(null, [.. errors.Distinct().OrderBy(e => e.File, StringComparer.Ordinal).ThenBy(e => e.Line)])
            : new(new([.. rules.OrderBy(r => r.Authority)]), []);
    }

    /// <summary>Adds a rule unless its id is taken.</summary>
    public static void Add(Rule rule, ObjectReader from, List<Rule> rules)
    {
        if (rules.Exists(r => r.Id == rule.Id))
        {
            from.Fault($"the id \"{rule.Id}\" is there twice; give one of them another", from.LineOf("id"));
            return;
        }

        rules.Add(rule);
    }

    private static void Group(ObjectReader file, RuleParser parser, List<Rule> rules)
    {
        string group = file.RequiredText("group");
        var authority = file.Choice("authority", RuleVocabulary.Authorities);
        var items = file.Objects("rules");
        file.NothingElse();
        if (items.Count > 0 && authority is null && !file.Has("authority"))
        {
            file.Fault($"\"authority\" is missing; one of: {string.Join(", ", RuleVocabulary.Authorities.Keys)}");
        }

        foreach (var item in items)
        {
            if (parser.Parse(item, authority ?? RuleAuthority.Default, group) is { } rule)
            {
                Add(rule, item, rules);
            }
        }
    }
}
