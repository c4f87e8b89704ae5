using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using HandsFree.Language.Tags;

namespace HandsFree.Language.Grammars;

/// <summary>Reads one JSGF file into rules that are not linked yet.</summary>
internal sealed partial class JsgfParser
{
    private readonly JsgfLexer lexer;
    private JsgfToken token;
    private int depth;

    private JsgfParser(string text, string file)
    {
        Nesting.CheckLength(text, file);
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
        lexer.TakeComment();
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
            Rule rule = Definition(file.Name);
            if (!file.Rules.TryAdd(rule.Name, rule))
            {
                throw new GrammarException(rule.At, $"<{rule.Name}> is defined twice; give one of the two another name");
            }
        }

        return file;
    }

    private Rule Definition(string grammar)
    {
        bool isPublic = token is { Kind: JsgfTokenKind.Word, Text: "public" };
        string comment = lexer.TakeComment();
        if (isPublic)
        {
            Advance();
        }

        JsgfToken name = Take(JsgfTokenKind.RuleName, "a rule definition '<name> = …;'");
        if (name.Text is "" or "NULL" or "VOID" || name.Text.Contains('.', StringComparison.Ordinal))
        {
            throw new GrammarException(name.At, $"expected a rule's own name without a dot, not <NULL> and not <VOID>, found <{name.Text}>");
        }

        TakeSign("=");
        Expansion body = Alternatives();
        if (token is { Kind: JsgfTokenKind.Sign, Text: "=" })
        {
            throw new GrammarException(token.At, $"expected ';' at the end of <{name.Text}>, found the '=' of another definition");
        }

        TakeSign(";");
        return new(grammar, name.Text, isPublic, body, name.At) { Examples = DocumentationComment.Examples(comment) };
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
        return double.TryParse(weight.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && value > 0 && double.IsFinite(value)
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
        if (token is { Kind: JsgfTokenKind.Sign, Text: "*" or "+" })
        {
            if (item is TagExpansion or RepeatExpansion { More: true })
            {
                throw new GrammarException(token.At, $"expected a word, a <rule>, ')' or ']' before '{token.Text}', found {start.Described}");
            }

            item = new RepeatExpansion(item, token.Text == "+", true);
            Advance();
            if (token is { Kind: JsgfTokenKind.Sign, Text: "*" or "+" })
            {
                throw new GrammarException(token.At, $"expected one '*' or '+' only, found '{token.Text}' after another");
            }
        }

        return item;
    }

    private Expansion Group(JsgfToken open)
    {
        if (++depth > Nesting.Deepest)
        {
            throw new GrammarException(open.At, $"more than {Nesting.Deepest} groups stand in one another; write the inner ones as rules of their own");
        }

        Expansion inner = Alternatives();
        depth--;
        TakeSign(open.Text == "(" ? ")" : "]");
        return open.Text == "(" ? inner : new RepeatExpansion(inner, false, false);
    }

    private static Expansion Words(JsgfToken token)
    {
        string[] words = Unescaped(token.Text).ToLowerInvariant().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        return words.Length switch
        {
            0 => throw new GrammarException(token.At, "expected a word between the quotes, found none"),
            1 => new WordExpansion(words[0]),
            _ => new SequenceExpansion([.. words.Select(w => new WordExpansion(w))]),
        };
    }

    private static TagExpansion Tag(JsgfToken token)
    {
        try
        {
            return new(TagParser.Parse(Unescaped(token.Text)), token.At);
        }
        catch (TagException e)
        {
            throw new GrammarException(Within(token, e.Offset), e.Message);
        }
    }

    /// <summary>A place inside a tag, which may go over several lines.</summary>
    private static SourcePosition Within(JsgfToken tag, int offset)
    {
        string before = tag.Text[..Math.Min(offset, tag.Text.Length)];
        int lineStart = before.LastIndexOf('\n') + 1;
        return lineStart == 0
            ? tag.At with { Column = tag.At.Column + 1 + offset }
            : tag.At with { Line = tag.At.Line + before.Count(c => c == '\n'), Column = offset - lineStart + 1 };
    }

    private static string Unescaped(string text) => Escape().Replace(text, "$1");

    [GeneratedRegex(@"\\(.)", RegexOptions.Singleline)]
    private static partial Regex Escape();

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
