using System.Collections.Immutable;
using HandsFree.Language.Automata;

namespace HandsFree.Language.Sentences;

/// <summary>Configurations that the same words lead to, in the order of their discovery; compared item by item.</summary>
internal sealed record ConfigurationSet(ImmutableArray<Configuration> Items)
{
    public bool Equals(ConfigurationSet? other) => other is not null && Items.SequenceEqual(other.Items);

    public override int GetHashCode() => Items.Aggregate(17, HashCode.Combine);
}
