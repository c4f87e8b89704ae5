using HandsFree.Core.Journal;

namespace HandsFree.Pages.Records;

/// <summary>A reading as a page shows it, also one that counts no more.</summary>
/// <param name="Event">The reading.</param>
/// <param name="Amendment">Why it counts no more, in words; null for one that stands.</param>
/// <param name="ReplacedBy">The id of the reading that took its place; null where none did.</param>
/// <param name="Was">The reading whose place this one took; null where it took none.</param>
public sealed record ChartedReading(ReadingRecorded Event, string? Amendment, string? ReplacedBy, ReadingRecorded? Was)
{
    /// <summary>Whether it counts.</summary>
    public bool Stands => Amendment is null;

    /// <summary>When it was measured.</summary>
    public DateTimeOffset At => Event.Confirmed.By.MeasuredAt;
}
