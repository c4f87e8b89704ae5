using System.Collections.Immutable;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Tags;

/// <summary>What one tag does: it sets the value of the rule, or named fields of it. The language is small on purpose:
/// <code>
/// tag        = step { ";" step }
/// step       = name "=" expression     a field of the rule's record; a name with blanks stands in quotes
///            | expression              the rule's value
/// expression = term { ("+" | "-" | "&amp;") term }        numbers; &amp; joins texts
/// term       = factor { ("*" | "/") factor }
/// factor     = number | 'text' | true | false | null | "$" name | "$" | "[" expression { "," expression } "]" | "(" expression ")"
/// </code>
/// <c>$name</c> is the value of the latest match of rule <c>name</c> in the same expansion, <c>$</c> the value so far (nothing counts
/// as 0, or as the empty text). A rule without value and fields passes on the value of what it refers to; records of several
/// referred rules are joined.</summary>
public sealed class TagProgram
{
    private readonly ImmutableArray<(string? Field, TagNode Expression)> steps;

    internal TagProgram(ImmutableArray<(string? Field, TagNode Expression)> steps, ImmutableHashSet<string> references)
    {
        this.steps = steps;
        References = references;
    }

    /// <summary>Names of the rules whose values are used.</summary>
    public ImmutableHashSet<string> References { get; }

    /// <summary>The fields that it sets, each with its value where that is a constant, and whether it surely has one: a rule that
    /// was not said leaves the field as it is.</summary>
    internal IEnumerable<(string Name, SemanticValue? Constant, bool IsSure)> Fields => steps.Where(s => s.Field is not null)
        .Select(s => (s.Field!, (s.Expression as ConstantNode)?.Value, s.Expression is not ReferenceNode));

    /// <summary>Whether it sets the rule's value as a whole.</summary>
    internal bool SetsValue => steps.Any(s => s.Field is null);

    /// <summary>Names of the rules ("" for the value so far) whose values it computes with, other than by joining texts.</summary>
    internal IEnumerable<string> Computed => steps.SelectMany(s => s.Expression.Computed(false));

    /// <summary>Runs the tag.</summary>
    /// <param name="result">The rule's value so far.</param>
    /// <param name="fields">The rule's fields so far.</param>
    /// <param name="lookup">The value of a rule matched in this expansion.</param>
    internal (SemanticValue? Result, SemanticRecord Fields) Run(
        SemanticValue? result, SemanticRecord fields, Func<string, SemanticValue?> lookup)
    {
        foreach (var (field, expression) in steps)
        {
            SemanticValue? soFar = result;
            SemanticValue? value = expression.Evaluate(name => name.Length == 0 ? soFar : lookup(name));
            if (field is null)
            {
                result = value;
            }
            else if (value is not null)
            {
                fields = fields.With(field, value);
            }
        }

        return (result, fields);
    }
}
