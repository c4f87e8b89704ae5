using HandsFree.Core.Residents;

namespace HandsFree.App.RuleDesk;

/// <summary>A resident of whom nothing is known, for readings that are nobody's.</summary>
internal static class Nobody
{
    /// <summary>No orders, no usual values.</summary>
    public static Resident Resident { get; } = new() { Id = "nobody", Name = "nobody", Room = 1, Born = DateOnly.MinValue };
}
