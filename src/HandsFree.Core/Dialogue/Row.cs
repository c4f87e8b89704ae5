using System.Collections.Immutable;

namespace HandsFree.Core.Dialogue;

/// <summary>One entry of the table: what a state does with one kind of event.</summary>
/// <param name="Doing">In words; empty where the event is ignored.</param>
/// <param name="Handle">Does it.</param>
/// <param name="To">The states in which it can end; checked by tests, drawn in the diagram.</param>
internal sealed record Row(string Doing, Func<Turn, Turn> Handle, ImmutableHashSet<StateKind> To)
{
    public bool IsIgnored => Doing.Length == 0;
}
