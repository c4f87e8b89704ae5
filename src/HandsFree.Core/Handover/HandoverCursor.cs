using HandsFree.Core.Meanings;

namespace HandsFree.Core.Handover;

/// <summary>Where a listener stands in the answers, for "next", "previous", "repeat" and "details".</summary>
/// <param name="Asked">The list that was asked for.</param>
/// <param name="Room">The room that was asked for, with <see cref="QueryKind.Room"/> alone.</param>
/// <param name="Index">Which item was said last; -1 for none.</param>
public sealed record HandoverCursor(QueryKind Asked, int? Room, int Index)
{
    /// <summary>Nothing was asked yet.</summary>
    public static HandoverCursor Start { get; } = new(QueryKind.Handover, null, -1);
}
