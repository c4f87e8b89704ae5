using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Handover;

/// <summary>Where a listener stands in the answers, for "next", "previous", "repeat" and "details".</summary>
/// <param name="Asked">The list that was asked for.</param>
/// <param name="Room">The room that was asked for, with <see cref="QueryKind.Room"/> and <see cref="QueryKind.LastValue"/>.</param>
/// <param name="Index">Which item was said last; -1 for none.</param>
public sealed record HandoverCursor(QueryKind Asked, int? Room, int Index)
{
    /// <summary>Nothing was asked yet.</summary>
    public static HandoverCursor Start { get; } = new(QueryKind.Handover, null, -1);

    /// <summary>The bed that was asked for with the room.</summary>
    public string? Bed { get; init; }

    /// <summary>The vital sign that was asked for, with <see cref="QueryKind.LastValue"/> alone.</summary>
    public VitalSign? Sign { get; init; }

    /// <summary>From when on the listener wants the lists to count; null for the present shift.</summary>
    public DateTimeOffset? Since { get; init; }

    /// <summary>The id of the resident of whom "told the nurse" was said once; the second time it is written.</summary>
    public string? SaidAsTold { get; init; }
}
