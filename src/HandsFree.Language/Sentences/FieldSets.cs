using System.Collections.Immutable;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Sentences;

/// <summary>Fields that a part of a grammar may set, and those that it sets whichever way is taken.</summary>
/// <param name="May">Names of fields that may be set.</param>
/// <param name="Must">Fields that will be set, with the value where that is known.</param>
internal sealed record FieldSets(ImmutableHashSet<string> May, ImmutableDictionary<string, SemanticValue?> Must)
{
    public static FieldSets None { get; } = new([], ImmutableDictionary<string, SemanticValue?>.Empty);

    public static FieldSets One(string name, SemanticValue? constant) => new([name], None.Must.Add(name, constant));

    /// <summary>Both; of a field that both may set, the value is not known.</summary>
    public FieldSets Then(FieldSets next)
    {
        if (ReferenceEquals(next, None) || ReferenceEquals(this, None))
        {
            return ReferenceEquals(next, None) ? this : next;
        }

        var twice = May.Intersect(next.May);
        return new(May.Union(next.May), Must.SetItems(next.Must).SetItems(
            twice.Where(n => Must.ContainsKey(n) || next.Must.ContainsKey(n)).Select(n => KeyValuePair.Create(n, (SemanticValue?)null))));
    }

    /// <summary>One of both.</summary>
    public FieldSets Or(FieldSets other) => new(May.Union(other.May), Must
        .Where(m => other.Must.ContainsKey(m.Key))
        .ToImmutableDictionary(m => m.Key, m => Equals(m.Value, other.Must[m.Key]) ? m.Value : null));

    /// <summary>This or nothing.</summary>
    public FieldSets Optional() => this with { Must = None.Must };
}
