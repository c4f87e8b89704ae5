using System.Collections.Immutable;
using System.Globalization;
using HandsFree.Language.Tags;

namespace HandsFree.Language.Grammars;

/// <summary>Reads one JSGF file into rules that are not linked yet.</summary>
internal sealed class JsgfParser
{
    private readonly JsgfLexer lexer;
    private JsgfToken token;

    private JsgfParser(string text, string file)
    {
        lexer = new(text, file);
        lexer.Header();
        token = lexer.Next();
    }

    public static JsgfFile Parse(string text, string file)
    {
        var parser = new JsgfParser(text, file);
        return parser.File();
    }

    private JsgfFile File()
    {
        TakeWord("grammar");
        string full = Take(JsgfTokenKind.Word, "the grammar's name").Text;
        TakeSign(";");
        var file = new JsgfFile(full[(full.LastIndexOf('.') + 1)..]);
        while (token is { Kind: JsgfTokenKind.Word, Text: "import" })
        {
            Advance();
            JsgfToken name = Take(JsgfTokenKind.RuleName, "<grammar.rule> or <grammar.*>");
            TakeSign(";");
            file.Imports.Add((name.Text, name.At));
        }

        while (token.Kind != JsgfTokenKind.End)
        {
            bool isPublic = token is { Kind: JsgfTokenKind.Word, Text: "public" };
            if (isPublic)
            {
                Advance();
            }

            JsgfToken name = Take(JsgfTokenKind.RuleName, "a rule definition '<name> = …;'");
            TakeSign("=");
            Expansion body = Alternatives();
            TakeSign(";");
            if (!file.Rules.TryAdd(name.Text, new Rule(file.Name, name.Text, isPublic, body, name.At)))
            {
                throw new GrammarException(name.At, $"<{name.Text}> is defined twice; give one of the two another name");
            }
        }

        return file;
    }

    private Expansion Alternatives()
    {
        var choices = ImmutableArray.CreateBuilder<Expansion>();
        var weights = ImmutableArray.CreateBuilder<double>();
        do
        {
            weights.Add(Weight());
            choices.Add(Sequence());
        }
        while (TrySign("|"));

        return choices.Count == 1 ? choices[0] : new AlternativesExpansion(choices.ToImmutable(), weights.ToImmutable());
    }

    private double Weight()
    {
        if (token.Kind != JsgfTokenKind.Weight)
        {
            return 1;
        }

        JsgfToken weight = token;
        Advance();
        return double.TryParse(weight.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && value > 0
            ? value
            : throw new GrammarException(weight.At, $"expected a weight above 0, found '{weight.Text}'");
    }

    private Expansion Sequence()
    {
        var parts = ImmutableArray.CreateBuilder<Expansion>();
        while (StartsItem())
        {
            parts.Add(Item());
        }

        return parts.Count switch
        {
            0 => throw new GrammarException(token.At, $"expected a word, a <rule>, '(' or '[', found {token.Described}"),
            1 => parts[0],
            _ => new SequenceExpansion(parts.ToImmutable()),
        };
    }

    private bool StartsItem() => token.Kind is JsgfTokenKind.Word or JsgfTokenKind.RuleName or JsgfTokenKind.Tag
        || token is { Kind: JsgfTokenKind.Sign, Text: "(" or "[" };

    private Expansion Item()
    {
        JsgfToken start = token;
        Advance();
        Expansion item = start.Kind switch
        {
            JsgfTokenKind.Word => Words(start),
            JsgfTokenKind.RuleName when start.Text == "NULL" => new SequenceExpansion([]),
            JsgfTokenKind.RuleName when start.Text == "VOID" => new AlternativesExpansion([], []),
            JsgfTokenKind.RuleName => new RuleExpansion(start.Text, start.At),
            JsgfTokenKind.Tag => Tag(start),
            _ => Group(start),
        };
        while (token is { Kind: JsgfTokenKind.Sign, Text: "*" or "+" })
        {
            item = new RepeatExpansion(item, token.Text == "+", true);
            Advance();
        }

        return item;
    }

    private Expansion Group(JsgfToken open)
    {
        Expansion inner = Alternatives();
        TakeSign(open.Text == "(" ? ")" : "]");
        return open.Text == "(" ? inner : new RepeatExpansion(inner, false, false);
    }

    private static Expansion Words(JsgfToken token)
    {
        string[] words = token.Text.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 1 ? new WordExpansion(words[0]) : new SequenceExpansion([.. words.Select(w => new WordExpansion(w))]);
    }

    private static TagExpansion Tag(JsgfToken token)
    {
        try
        {
            return new(TagParser.Parse(token.Text));
        }
        catch (TagException e)
        {
            throw new GrammarException(token.At with { Column = token.At.Column + 1 + e.Offset }, e.Message);
        }
    }

    private void Advance() => token = lexer.Next();

    private JsgfToken Take(JsgfTokenKind kind, string what)
    {
        JsgfToken taken = token.Kind == kind ? token : throw new GrammarException(token.At, $"expected {what}, found {token.Described}");
        Advance();
        return taken;
    }

    private void TakeWord(string word)
    {
        if (token.Kind != JsgfTokenKind.Word || token.Text != word)
        {
            throw new GrammarException(token.At, $"expected '{word}', found {token.Described}");
        }

        Advance();
    }

    private bool TrySign(string sign)
    {
        if (token.Kind != JsgfTokenKind.Sign || token.Text != sign)
        {
            return false;
        }

        Advance();
        return true;
    }

    private void TakeSign(string sign)
    {
        SourcePosition at = token.At;
        string found = token.Described;
        if (!TrySign(sign))
        {
            throw new GrammarException(at, $"expected '{sign}', found {found}");
        }
    }
}
