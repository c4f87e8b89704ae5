using System.Collections.Immutable;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Tags;

/// <summary>An expression of a tag.</summary>
internal abstract record TagNode
{
    /// <summary>Computes the expression.</summary>
    /// <param name="lookup">The value of a rule that was matched in this expansion, or null; "" asks for the value so far.</param>
    public abstract SemanticValue? Evaluate(Func<string, SemanticValue?> lookup);
}

/// <summary>A constant.</summary>
internal sealed record ConstantNode(SemanticValue Value) : TagNode
{
    public override SemanticValue Evaluate(Func<string, SemanticValue?> lookup) => Value;
}

/// <summary>$name, or $ for the value so far.</summary>
internal sealed record ReferenceNode(string Name) : TagNode
{
    public override SemanticValue? Evaluate(Func<string, SemanticValue?> lookup) => lookup(Name);
}

/// <summary>[a, b]; an item without a value is left out.</summary>
internal sealed record ListNode(ImmutableArray<TagNode> Items) : TagNode
{
    public override SemanticValue Evaluate(Func<string, SemanticValue?> lookup) =>
        new SemanticList([.. Items.Select(i => i.Evaluate(lookup)).OfType<SemanticValue>()]);
}

/// <summary>a + b, a - b, a * b, a / b on numbers (nothing counts as 0); a &amp; b joins texts.</summary>
internal sealed record OperationNode(char Operator, TagNode Left, TagNode Right) : TagNode
{
    public override SemanticValue Evaluate(Func<string, SemanticValue?> lookup)
    {
        SemanticValue? left = Left.Evaluate(lookup);
        SemanticValue? right = Right.Evaluate(lookup);
        if (Operator == '&')
        {
            return new SemanticText(Text(left) + Text(right));
        }

        decimal a = Number(left);
        decimal b = Number(right);
        return new SemanticNumber(Operator switch { '+' => a + b, '-' => a - b, '*' => a * b, _ => a / b });
    }

    private static decimal Number(SemanticValue? value) => value switch
    {
        null => 0,
        SemanticNumber n => n.Value,
        _ => throw new TagException($"{value} is no number"),
    };

    private static string Text(SemanticValue? value) => value switch
    {
        null => "",
        SemanticText t => t.Value,
        _ => value.ToString(),
    };
}
