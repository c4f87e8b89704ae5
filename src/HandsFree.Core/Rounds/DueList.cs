using HandsFree.Core.Quantities;

namespace HandsFree.Core.Rounds;

/// <summary>What is still to be taken from one resident.</summary>
public static class DueList
{
    /// <summary>The signs that are not settled, in the order in which the round takes them.</summary>
    /// <param name="due">All that the round takes.</param>
    /// <param name="settled">Whether a sign was saved, not taken, or left open.</param>
    public static IReadOnlyList<VitalSign> Open(IReadOnlyList<VitalSign> due, Func<VitalSign, bool> settled) => [.. due.Where(s => !settled(s))];
}
