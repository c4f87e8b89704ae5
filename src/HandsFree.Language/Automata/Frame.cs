using System.Collections.Immutable;
using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;
using HandsFree.Language.Numbers;
using HandsFree.Language.Tags;

namespace HandsFree.Language.Automata;

/// <summary>The meaning of a rule while it is being matched, above the frame of the rule that refers to it.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Result">The value that a tag set.</param>
/// <param name="Fields">The fields that tags set.</param>
/// <param name="Passed">What the referred rules left: the last value, or their records joined.</param>
/// <param name="References">Values of referred rules that a tag of this rule uses.</param>
/// <param name="Parent">The referring rule's frame.</param>
internal sealed record Frame(
    Rule Rule,
    SemanticValue? Result,
    SemanticRecord Fields,
    SemanticValue? Passed,
    ImmutableSortedDictionary<string, SemanticValue> References,
    Frame? Parent)
{
    private int hash;

    public static Frame Open(Rule rule, Frame? parent) =>
        new(rule, null, SemanticRecord.Empty, null, ImmutableSortedDictionary<string, SemanticValue>.Empty, parent);

    /// <summary>The value of the rule once it is complete.</summary>
    public SemanticValue? Value =>
        (Result is SemanticText said ? new SemanticText(Figures.Close(said.Value)) : Result)
        ?? (Fields.Fields.IsEmpty ? Passed ?? OnlyReference : Passed is SemanticRecord passed ? Join(passed, Fields) : Fields);

    private SemanticValue? OnlyReference => References.Count == 1 ? References.Values.First() : null;

    public Frame Run(TagProgram program)
    {
        var (result, fields) = program.Run(Result, Fields, name => References.GetValueOrDefault(name));
        return this with { Result = result, Fields = fields, hash = 0 };
    }

    /// <summary>A text that grows word by word, for grammars without tags; numbers as figures, so that two ways to say one string
    /// of digits mean the same.</summary>
    public Frame Say(string word) =>
        this with { Result = new SemanticText(Figures.Append(Result is SemanticText said ? said.Value : "", word)), hash = 0 };

    /// <summary>Takes the value of a referred rule.</summary>
    public Frame Receive(string rule, SemanticValue? value)
    {
        if (value is null)
        {
            return this;
        }

        if (Rule.Used.Contains(rule))
        {
            return this with { References = References.SetItem(rule, value), hash = 0 };
        }

        SemanticValue passed = Passed is SemanticRecord before && value is SemanticRecord more ? Join(before, more) : value;
        return this with { Passed = passed, hash = 0 };
    }

    /// <summary>The frame with marks in place of values.</summary>
    /// <param name="parent">The parent's frame with marks.</param>
    /// <param name="may">Whether the value of a referred rule ("" for the frame's own) may be replaced.</param>
    /// <param name="mark">Gives the mark of a value.</param>
    public Frame Marked(Frame? parent, Func<string, bool> may, Func<SemanticValue, SemanticValue> mark)
    {
        bool own = may("");
        return this with
        {
            Result = Result is not null && own ? mark(Result) : Result,
            Fields = own ? (SemanticRecord)mark(Fields) : Fields,
            Passed = Passed is not null && own ? mark(Passed) : Passed,
            References = References.ToImmutableSortedDictionary(r => r.Key, r => own && may(r.Key) ? mark(r.Value) : r.Value),
            Parent = parent,
            hash = 0,
        };
    }

    public bool Equals(Frame? other) =>
        ReferenceEquals(this, other)
        || (other is not null && GetHashCode() == other.GetHashCode() && Rule == other.Rule && Equals(Result, other.Result)
            && Fields.Equals(other.Fields) && Equals(Passed, other.Passed) && SameReferences(other) && Equals(Parent, other.Parent));

    public override int GetHashCode()
    {
        if (hash == 0)
        {
            var sum = new HashCode();
            sum.Add(Rule);
            sum.Add(Result);
            sum.Add(Fields);
            sum.Add(Passed);
            foreach (var (name, value) in References)
            {
                sum.Add(name);
                sum.Add(value);
            }

            sum.Add(Parent);
            hash = sum.ToHashCode() | 1;
        }

        return hash;
    }

    private bool SameReferences(Frame other) =>
        References.Count == other.References.Count && References.All(r => r.Value.Equals(other.References.GetValueOrDefault(r.Key)));

    private static SemanticRecord Join(SemanticRecord first, SemanticRecord second) =>
        second.Fields.Aggregate(first, (sum, field) => sum.With(field.Key, field.Value));
}
