using HandsFree.Core.Journal;
using HandsFree.Core.Observations;

namespace HandsFree.Pages.Records;

/// <summary>A reading as a page shows it, also one that counts no more.</summary>
/// <param name="Id">The id of its event.</param>
/// <param name="Reading">The reading.</param>
/// <param name="At">When it was measured.</param>
/// <param name="Event">What was recorded here; null for one that another system recorded.</param>
/// <param name="Amendment">Why it counts no more, in words; null for one that stands.</param>
/// <param name="ReplacedBy">The id of the reading that took its place; null where none did.</param>
/// <param name="Was">The reading whose place this one took; null where it took none.</param>
public sealed record ChartedReading(
    string Id, Reading Reading, DateTimeOffset At, ReadingRecorded? Event, string? Amendment, string? ReplacedBy, ReadingRecorded? Was)
{
    /// <summary>Whether it counts.</summary>
    public bool Stands => Amendment is null;

    /// <summary>Who measured it; for one that another system recorded, that.</summary>
    public string By => Event?.Confirmed.By.Person ?? "other system";

    /// <summary>Whether it was entered late.</summary>
    public bool IsLate => Event?.Confirmed.By.Late == true;

    /// <summary>Whether a rule asked for it.</summary>
    public bool IsRecheck => Event?.IsRecheck == true;
}
