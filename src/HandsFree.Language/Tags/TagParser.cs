using System.Collections.Immutable;
using System.Globalization;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Tags;

/// <summary>Reads the text of a tag; see <see cref="TagProgram"/> for the language.</summary>
internal sealed class TagParser(string text)
{
    private readonly ImmutableHashSet<string>.Builder references = ImmutableHashSet.CreateBuilder<string>();
    private int at;

    /// <summary>A tag is read and carried out by calls within calls: its length bounds them.</summary>
    private const int Longest = 1_000;

    public static TagProgram Parse(string text)
    {
        if (text.Length > Longest)
        {
            throw new TagException($"the tag is longer than {Longest} characters; part it", 0);
        }

        var parser = new TagParser(text);
        var steps = ImmutableArray.CreateBuilder<(string?, TagNode)>();
        do
        {
            steps.Add(parser.Step());
        }
        while (parser.Take(';'));

        parser.Blank();
        return parser.at == text.Length
            ? new(steps.ToImmutable(), parser.references.ToImmutable())
            : throw parser.Expected("an operator, ';' or the end of the tag");
    }

    private (string?, TagNode) Step()
    {
        Blank();
        int start = at;
        string? name = at < text.Length && text[at] is '\'' ? Quoted() : Name();
        if (name is not null && Take('='))
        {
            return (name, Expression());
        }

        at = start;
        return (null, Expression());
    }

    private TagNode Expression()
    {
        TagNode left = Term();
        for (char? op = TakeAny("+-&"); op is not null; op = TakeAny("+-&"))
        {
            left = new OperationNode(op.Value, left, Term());
        }

        return left;
    }

    private TagNode Term()
    {
        TagNode left = Factor();
        for (char? op = TakeAny("*/"); op is not null; op = TakeAny("*/"))
        {
            left = new OperationNode(op.Value, left, Factor());
        }

        return left;
    }

    private TagNode Factor()
    {
        Blank();
        char next = at < text.Length ? text[at] : '\0';
        switch (next)
        {
            case '$':
                at++;
                string reference = Name() ?? "";
                references.Add(reference);
                return new ReferenceNode(reference);
            case '\'':
                return new ConstantNode(new SemanticText(Quoted()));
            case '(':
                at++;
                TagNode inner = Expression();
                return Take(')') ? inner : throw Expected("')'");
            case '[':
                at++;
                var items = ImmutableArray.CreateBuilder<TagNode>();
                do
                {
                    items.Add(Expression());
                }
                while (Take(','));
                return Take(']') ? new ListNode(items.ToImmutable()) : throw Expected("',' or ']'");
            case >= '0' and <= '9':
                return Number();
            default:
                return Name() switch
                {
                    "true" => new ConstantNode(new SemanticTruth(true)),
                    "false" => new ConstantNode(new SemanticTruth(false)),
                    "null" => new ConstantNode(SemanticNothing.Only),
                    null => throw Expected("a number, a 'text', $name, '(' or '['"),
                    var word => throw new TagException($"'{word}' has no meaning here; write a text in single quotes, a rule's value as ${word}", at),
                };
        }
    }

    private ConstantNode Number()
    {
        int start = at;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] == '.'))
        {
            at++;
        }

        return decimal.TryParse(text[start..at], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value)
            ? new(new SemanticNumber(value))
            : throw new TagException($"'{text[start..at]}' is no number", start);
    }

    private string Quoted()
    {
        int end = text.IndexOf('\'', at + 1);
        if (end < 0)
        {
            throw new TagException("a text that begins with ' must end with '", at);
        }

        string inner = text[(at + 1)..end];
        at = end + 1;
        return inner;
    }

    private string? Name()
    {
        int start = at;
        while (at < text.Length && (char.IsAsciiLetterOrDigit(text[at]) || text[at] == '_') && !(at == start && char.IsAsciiDigit(text[at])))
        {
            at++;
        }

        return at > start ? text[start..at] : null;
    }

    private bool Take(char wanted)
    {
        Blank();
        if (at >= text.Length || text[at] != wanted)
        {
            return false;
        }

        at++;
        return true;
    }

    private char? TakeAny(string wanted)
    {
        Blank();
        return at < text.Length && wanted.Contains(text[at], StringComparison.Ordinal) ? text[at++] : null;
    }

    private void Blank()
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
        {
            at++;
        }
    }

    private TagException Expected(string what) =>
        new($"expected {what}, found {(at < text.Length ? $"'{text[at]}'" : "the end of the tag")}", at);
}
