using System.Buffers;
using System.Globalization;
using System.Text;

namespace HandsFree.Language.Grammars;

/// <summary>Writes a grammar as one JSGF text without tags and imports, for engines that read JSGF themselves.</summary>
public static class JsgfWriter
{
    private static readonly SearchValues<char> Signs = SearchValues.Create("<>{}/\\\";=|*+()[]");

    /// <summary>The text, with one public rule &lt;root&gt;.</summary>
    public static string Write(Grammar grammar)
    {
        var names = new Dictionary<Rule, string>();
        foreach (Rule rule in grammar.Rules)
        {
            names.Add(rule, rule == grammar.Root ? "root" : $"r{names.Count}_{rule.Name}");
        }

        var text = new StringBuilder("#JSGF V1.0;\ngrammar handsfree;\n");
        foreach (Rule rule in grammar.Rules)
        {
            text.Append(rule == grammar.Root ? "public " : "").Append('<').Append(names[rule]).Append("> = ");
            Append(text, rule.Body, names);
            text.Append(" ;\n");
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, Expansion e, Dictionary<Rule, string> names)
    {
        switch (e)
        {
            case WordExpansion word:
                text.Append(word.Word.AsSpan().ContainsAny(Signs) ? '"' + word.Word.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + '"' : word.Word);
                break;
            case RuleExpansion rule:
                text.Append('<').Append(names[rule.Target]).Append('>');
                break;
            case SequenceExpansion sequence:
                Expansion[] said = [.. sequence.Parts.Where(p => p is not TagExpansion)];
                text.Append(said.Length == 0 ? "<NULL>" : "");
                for (int i = 0; i < said.Length; i++)
                {
                    text.Append(i > 0 ? " " : "");
                    Append(text, said[i], names);
                }

                break;
            case AlternativesExpansion { Choices.IsEmpty: true }:
                text.Append("<VOID>");
                break;
            case AlternativesExpansion alternatives:
                text.Append('(');
                for (int i = 0; i < alternatives.Choices.Length; i++)
                {
                    text.Append(i > 0 ? " | " : " ").Append('/').Append(alternatives.Weights[i].ToString(CultureInfo.InvariantCulture)).Append("/ ");
                    Append(text, alternatives.Choices[i], names);
                }

                text.Append(" )");
                break;
            case RepeatExpansion repeat:
                text.Append(repeat is { AtLeastOnce: false, More: false } ? '[' : '(');
                Append(text, repeat.Body, names);
                text.Append(repeat is { AtLeastOnce: false, More: false } ? "]" : repeat.AtLeastOnce ? ")+" : ")*");
                break;
            default:
                text.Append("<NULL>");
                break;
        }
    }
}
