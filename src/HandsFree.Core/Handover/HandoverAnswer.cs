using HandsFree.Core.Reports;

namespace HandsFree.Core.Handover;

/// <summary>An answer of the handover.</summary>
/// <param name="Text">What is spoken.</param>
/// <param name="Items">All lines of the list that was asked for, also those that "next" would bring.</param>
/// <param name="Cursor">Where the listener stands now.</param>
/// <param name="IsGoodbye">The listener is done.</param>
public sealed record HandoverAnswer(string Text, IReadOnlyList<HandoverItem> Items, HandoverCursor Cursor, bool IsGoodbye = false)
{
    /// <summary>From when on the list counts; null for all that the record holds.</summary>
    public DateTimeOffset? Since { get; init; }

    /// <summary>Reports of which the nurse was told, to be written before the text is said.</summary>
    public IReadOnlyList<Report> NurseTold { get; init; } = [];
}
