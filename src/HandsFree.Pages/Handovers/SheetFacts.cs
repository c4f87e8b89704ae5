using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rounds;

namespace HandsFree.Pages.Handovers;

/// <summary>What a page says of itself, and how the home wants it said.</summary>
/// <param name="Home">The home's name, or null.</param>
/// <param name="At">When the page is made, in the home's time.</param>
/// <param name="Since">From when on the list counts, in the home's time.</param>
/// <param name="Device">The name of the device whose record it is.</param>
/// <param name="By">The id of who made it; null where nobody is set up.</param>
/// <param name="Entries">Up to which entry of the journal.</param>
/// <param name="Units">The home's units.</param>
public sealed record SheetFacts(string? Home, DateTimeOffset At, DateTimeOffset Since, string Device, string? By, long Entries, RosterUnits Units)
{
    /// <summary>The beginning of that entry's hash, or null: on paper it shows later whether the journal still has what it had.</summary>
    public string? Anchor { get; init; }

    /// <summary>A moment in the home's time zone.</summary>
    public required Func<DateTimeOffset, DateTimeOffset> Here { get; init; }

    /// <summary>What the home's round takes.</summary>
    public required RoundPlan Round { get; init; }

    /// <summary>The home's word for "refused" and the like.</summary>
    public Func<string, string> Wording { get; init; } = static text => text;

    /// <summary>After what time something that waits is overdue.</summary>
    public Overdue Overdue { get; init; } = Overdue.Default;

    /// <summary>Whether the residents' names are on the page.</summary>
    public bool WithNames { get; init; } = true;

    /// <summary>What the reader must know of the beginning, or null.</summary>
    public string? Remark { get; init; }
}
