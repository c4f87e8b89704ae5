using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Handover;

/// <summary>One resident at the handover.</summary>
/// <param name="Resident">Who; the name is for the screen, it is never spoken here.</param>
/// <param name="Rank">The gravest of what there is.</param>
/// <param name="Reports">Open reports, the gravest first.</param>
/// <param name="Rechecks">Rechecks that were asked for and not done.</param>
/// <param name="NotTaken">What was not taken and not taken later.</param>
/// <param name="LeftOpen">Values left open and not taken later.</param>
/// <param name="Last">The last reading of each sign.</param>
/// <param name="Readings">All readings that stand, oldest first; what the reports name is here.</param>
public sealed record HandoverEntry(
    Resident Resident,
    HandoverRank Rank,
    IReadOnlyList<ReportOpened> Reports,
    IReadOnlyList<RecheckAsked> Rechecks,
    IReadOnlyList<NotTakenRecorded> NotTaken,
    IReadOnlyList<LeftOpen> LeftOpen,
    IReadOnlyDictionary<VitalSign, ReadingRecorded> Last,
    IReadOnlyList<ReadingRecorded> Readings)
{
    /// <summary>What must be known of the reports: a reading that one rests on was amended.</summary>
    public IReadOnlyList<ReportNoted> Notes { get; init; } = [];

    /// <summary>The reading that was there before, by the id of the corrected one.</summary>
    public IReadOnlyDictionary<string, ReadingRecorded> CorrectedFrom { get; init; } = new Dictionary<string, ReadingRecorded>();
}
