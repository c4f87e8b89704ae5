using System.Collections.Immutable;

namespace HandsFree.Language.Sentences;

/// <summary>Names of fields that a part of a grammar may set, and that it sets whichever way is taken.</summary>
internal sealed record FieldSets(ImmutableHashSet<string> May, ImmutableHashSet<string> Must)
{
    public static FieldSets None { get; } = new([], []);

    public FieldSets Then(FieldSets next) => ReferenceEquals(next, None) ? this : new(May.Union(next.May), Must.Union(next.Must));

    public FieldSets Or(FieldSets other) => new(May.Union(other.May), Must.Intersect(other.Must));

    public FieldSets Optional() => this with { Must = [] };
}
