using System.Collections.Immutable;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Tags;

/// <summary>An expression of a tag.</summary>
internal abstract record TagNode
{
    /// <summary>Computes the expression.</summary>
    /// <param name="lookup">The value of a rule that was matched in this expansion, or null; "" asks for the value so far.</param>
    public abstract SemanticValue? Evaluate(Func<string, SemanticValue?> lookup);

    /// <summary>Names whose values arithmetic works on.</summary>
    /// <param name="inArithmetic">Whether the node's value itself goes into arithmetic.</param>
    public virtual IEnumerable<string> Computed(bool inArithmetic) => [];
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

    public override IEnumerable<string> Computed(bool inArithmetic) => inArithmetic ? [Name] : [];
}

/// <summary>[a, b]; an item without a value is left out.</summary>
internal sealed record ListNode(ImmutableArray<TagNode> Items) : TagNode
{
    public override SemanticValue Evaluate(Func<string, SemanticValue?> lookup) =>
        new SemanticList([.. Items.Select(i => i.Evaluate(lookup)).OfType<SemanticValue>()]);

    public override IEnumerable<string> Computed(bool inArithmetic) => Items.SelectMany(i => i.Computed(inArithmetic));
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
        if (Operator == '/' && b == 0)
        {
            throw new TagException($"{a} can't be divided by 0");
        }

        try
        {
            return new SemanticNumber(Operator switch { '+' => a + b, '-' => a - b, '*' => a * b, _ => a / b });
        }
        catch (OverflowException)
        {
            throw new TagException($"{a} {Operator} {b} is too large; a number has at most 28 digits");
        }
    }

    public override IEnumerable<string> Computed(bool inArithmetic) =>
        Left.Computed(Operator != '&').Concat(Right.Computed(Operator != '&'));

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
