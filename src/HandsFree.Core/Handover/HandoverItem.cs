namespace HandsFree.Core.Handover;

/// <summary>One line of an answer. Room and bed, no name.</summary>
/// <param name="Room">1 to 999; 0 for a resident who is no longer on the roster.</param>
/// <param name="Bed">a to d, or null.</param>
/// <param name="Rank">Why the line is where it is.</param>
/// <param name="Text">The line as it is spoken.</param>
public sealed record HandoverItem(int Room, string? Bed, HandoverRank Rank, string Text)
{
    /// <summary>The resident's id; the name is looked up by who may show it.</summary>
    public string Resident { get; init; } = "";

    /// <summary>Something of it has waited longer than the home wants.</summary>
    public bool IsOverdue { get; init; }
}
