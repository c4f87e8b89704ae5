using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Handover;

/// <summary>One resident at the handover.</summary>
/// <param name="Resident">Who; the name is for the screen, it is never spoken here.</param>
/// <param name="Rank">The gravest of what there is.</param>
/// <param name="Reports">Open reports, the gravest first.</param>
/// <param name="Rechecks">Rechecks that were asked for and not done, also long before the list begins.</param>
/// <param name="NotTaken">What was not taken and not taken later.</param>
/// <param name="LeftOpen">Values left open and not taken later.</param>
/// <param name="Last">The last reading of each sign.</param>
/// <param name="Readings">All readings that stand, oldest first; what the reports name is here.</param>
public sealed record HandoverEntry(
    Resident Resident,
    HandoverRank Rank,
    IReadOnlyList<Report> Reports,
    IReadOnlyList<RecheckAsked> Rechecks,
    IReadOnlyList<NotTakenRecorded> NotTaken,
    IReadOnlyList<LeftOpen> LeftOpen,
    IReadOnlyDictionary<VitalSign, ReadingRecorded> Last,
    IReadOnlyList<ReadingRecorded> Readings)
{
    /// <summary>Reports that a nurse acknowledged since the list began, or whose plan stands.</summary>
    public IReadOnlyList<Report> Acknowledged { get; init; } = [];

    /// <summary>Plans that stand, the latest first.</summary>
    public IReadOnlyList<PlanMade> Plans { get; init; } = [];

    /// <summary>The last reading of each sign, also where it is from before the list begins.</summary>
    public IReadOnlyDictionary<VitalSign, ReadingRecorded> LastEver { get; init; } = new Dictionary<VitalSign, ReadingRecorded>();

    /// <summary>What is due and was neither taken, nor not taken with a reason, nor left open since the list began, in the round's order.
    /// Empty: the set is complete.</summary>
    public IReadOnlyList<VitalSign> StillDue { get; init; } = [];

    /// <summary>Something is due, and nobody has been there since the list began; whether a report of before is open or not.</summary>
    public bool NotVisited => StillDue.Count > 0 && !IsSeen;

    /// <summary>Somebody has been there, and the set is not complete.</summary>
    public bool IsBegun => StillDue.Count > 0 && IsSeen;

    /// <summary>Where she is while the list is made; null for a resident who is there.</summary>
    public Absence? Away { get; init; }

    private bool IsSeen => Last.Count + NotTaken.Count + LeftOpen.Count > 0;

    /// <summary>She came to her place since the list began or in the last days, or her first readings are in the list.</summary>
    public bool IsNew { get; init; }

    /// <summary>Since the list began something of a report or a plan happened, a reading was amended, or the rules spoke.</summary>
    public bool IsChanged { get; init; }

    /// <summary>A report or a recheck has waited longer than the home wants.</summary>
    public bool IsOverdue { get; init; }

    /// <summary>The moment of the handover; null where none was given.</summary>
    public DateTimeOffset? Now { get; init; }

    /// <summary>The reading that was there before, by the id of the corrected one.</summary>
    public IReadOnlyDictionary<string, ReadingRecorded> CorrectedFrom { get; init; } = new Dictionary<string, ReadingRecorded>();
}
