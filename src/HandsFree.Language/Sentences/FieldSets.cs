using System.Collections.Immutable;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Sentences;

/// <summary>Fields that a part of a rule may set, and those that it sets whichever way is taken.</summary>
/// <param name="May">Names of fields that may be set.</param>
/// <param name="Own">Fields that the rule's own tags will set, with the value where that is known.</param>
/// <param name="Passed">Fields that referred rules will pass on.</param>
/// <param name="MayLose">Whether a referred rule may pass on a value that is no record, which drops what was passed on before.</param>
internal sealed record FieldSets(
    ImmutableHashSet<string> May,
    ImmutableDictionary<string, SemanticValue?> Own,
    ImmutableDictionary<string, SemanticValue?> Passed,
    bool MayLose)
{
    private static readonly ImmutableDictionary<string, SemanticValue?> Nothing = ImmutableDictionary<string, SemanticValue?>.Empty;

    public static FieldSets None { get; } = new([], Nothing, Nothing, false);

    public static FieldSets One(string name, SemanticValue? constant, bool isSure) =>
        None with { May = [name], Own = isSure ? Nothing.Add(name, constant) : Nothing };

    /// <summary>Both; of a field that both may set, the value is not known.</summary>
    public FieldSets Then(FieldSets next)
    {
        if (ReferenceEquals(next, None) || ReferenceEquals(this, None))
        {
            return ReferenceEquals(next, None) ? this : next;
        }

        var twice = May.Intersect(next.May);
        return new(
            May.Union(next.May),
            Unknown(Own.SetItems(next.Own), twice),
            Unknown((next.MayLose ? Nothing : Passed).SetItems(next.Passed), twice),
            MayLose || next.MayLose);
    }

    /// <summary>One of both.</summary>
    public FieldSets Or(FieldSets other) =>
        new(May.Union(other.May), InBoth(Own, other.Own), InBoth(Passed, other.Passed), MayLose || other.MayLose);

    /// <summary>This or nothing.</summary>
    public FieldSets Optional() => this with { Own = Nothing, Passed = Nothing };

    /// <summary>As the referring rule gets it.</summary>
    public FieldSets PassedOn(bool mayLose) => new(May, Nothing, Passed.SetItems(Own), mayLose);

    private static ImmutableDictionary<string, SemanticValue?> Unknown(
        ImmutableDictionary<string, SemanticValue?> fields, ImmutableHashSet<string> names) =>
        fields.SetItems(names.Where(fields.ContainsKey).Select(n => KeyValuePair.Create(n, (SemanticValue?)null)));

    private static ImmutableDictionary<string, SemanticValue?> InBoth(
        ImmutableDictionary<string, SemanticValue?> one, ImmutableDictionary<string, SemanticValue?> other) =>
        one.Where(f => other.ContainsKey(f.Key)).ToImmutableDictionary(f => f.Key, f => Equals(f.Value, other[f.Key]) ? f.Value : null);
}
