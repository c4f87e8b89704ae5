using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace HandsFree.Language.Meaning;

/// <summary>What a way through a grammar means: a number, a text, a truth value, nothing, a list or a record. Immutable,
/// compared by content, without one clinical word.</summary>
public abstract record SemanticValue
{
    private protected SemanticValue()
    {
    }

    /// <summary>The value as JSON, keys in the order of their assignment, numbers as they were written.</summary>
    public abstract override string ToString();
}

/// <summary>A number, exact.</summary>
/// <param name="Value">The number.</param>
public sealed record SemanticNumber(decimal Value) : SemanticValue
{
    /// <inheritdoc/>
    public override string ToString() => Value.ToString(CultureInfo.InvariantCulture);

    /// <summary>Numbers are equal by value: 98.0 is 98.</summary>
    public bool Equals(SemanticNumber? other) => other is not null && Value == other.Value;

    /// <inheritdoc/>
    public override int GetHashCode() => Value.GetHashCode();
}

/// <summary>A text.</summary>
/// <param name="Value">The text.</param>
public sealed record SemanticText(string Value) : SemanticValue
{
    /// <inheritdoc/>
    public override string ToString() => "\"" + Value.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";
}

/// <summary>True or false.</summary>
/// <param name="Value">Which.</param>
public sealed record SemanticTruth(bool Value) : SemanticValue
{
    /// <inheritdoc/>
    public override string ToString() => Value ? "true" : "false";
}

/// <summary>Nothing, said on purpose (a room without a bed).</summary>
public sealed record SemanticNothing : SemanticValue
{
    /// <summary>The only one.</summary>
    public static SemanticNothing Only { get; } = new();

    /// <inheritdoc/>
    public override string ToString() => "null";
}

/// <summary>A list, in order.</summary>
/// <param name="Items">The items.</param>
public sealed record SemanticList(ImmutableArray<SemanticValue> Items) : SemanticValue
{
    /// <inheritdoc/>
    public override string ToString() => "[" + string.Join(", ", Items) + "]";

    /// <summary>Lists are equal item by item.</summary>
    public bool Equals(SemanticList? other) => other is not null && Items.SequenceEqual(other.Items);

    /// <inheritdoc/>
    public override int GetHashCode() => Items.Aggregate(17, HashCode.Combine);
}

/// <summary>A record of named fields, in the order of their assignment; equal whatever the order.</summary>
/// <param name="Fields">Name and value; names are unique.</param>
public sealed record SemanticRecord(ImmutableArray<KeyValuePair<string, SemanticValue>> Fields) : SemanticValue
{
    /// <summary>No fields.</summary>
    public static SemanticRecord Empty { get; } = new([]);

    /// <summary>The field of that name, or null.</summary>
    public SemanticValue? this[string name]
    {
        get
        {
            foreach (var (key, value) in Fields)
            {
                if (key == name)
                {
                    return value;
                }
            }

            return null;
        }
    }

    /// <summary>The record with one field set or replaced.</summary>
    public SemanticRecord With(string name, SemanticValue value)
    {
        for (int i = 0; i < Fields.Length; i++)
        {
            if (Fields[i].Key == name)
            {
                return new(Fields.SetItem(i, new(name, value)));
            }
        }

        return new(Fields.Add(new(name, value)));
    }

    /// <inheritdoc/>
    public override string ToString()
    {
        var text = new StringBuilder("{");
        foreach (var (key, value) in Fields)
        {
            text.Append(text.Length > 1 ? ", " : "").Append('"').Append(key).Append("\": ").Append(value);
        }

        return text.Append('}').ToString();
    }

    /// <summary>Records are equal when they have the same names with the same values.</summary>
    public bool Equals(SemanticRecord? other) =>
        other is not null && Fields.Length == other.Fields.Length && Fields.All(f => f.Value.Equals(other[f.Key]));

    /// <inheritdoc/>
    public override int GetHashCode() => Fields.Aggregate(31, (sum, f) => sum + HashCode.Combine(f.Key, f.Value));
}
