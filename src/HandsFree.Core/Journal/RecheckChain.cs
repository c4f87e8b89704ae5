using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Journal;

/// <summary>Readings of one vital sign of one resident that belong together: the first, and the rechecks that the rules asked for.
/// What is reported of them is said of all.</summary>
/// <param name="Resident">The resident's id.</param>
/// <param name="Sign">Which vital sign.</param>
/// <param name="Readings">The readings that stand, in the order in which they were entered.</param>
/// <param name="RechecksAsked">How many rechecks of it were asked for: what
/// <see cref="Rules.DecisionContext.RechecksDone"/> is to be for the next reading.</param>
/// <param name="Waiting">The recheck that was asked for last and is not done; null where none is.</param>
public sealed record RecheckChain(
    string Resident, VitalSign Sign, IReadOnlyList<ReadingRecorded> Readings, int RechecksAsked, RecheckAsked? Waiting)
{
    /// <summary>Whether the recheck that waits is an item of the due list (an hour or more after it was asked for), and no second
    /// measurement at the bedside.</summary>
    public bool WaitsForLater => Waiting is { } asked && asked.DueAt - asked.At >= RecheckChains.OneSet;

    /// <summary>The reading that raised the doubt for which the recheck waits, with what the rules said of it; null where none does.</summary>
    public ReadingRecorded? Doubted => Readings.LastOrDefault(r => r.Id == Waiting?.Reading);

    /// <summary>How soon a nurse must know of the doubted reading where its recheck is not done; null where she need not.</summary>
    public ReportUrgency? Urgency => Doubted?.Decision.Outcome switch
    {
        Outcome.ReportNow => ReportUrgency.Now,
        Outcome.ReportThisShift => ReportUrgency.ThisShift,
        _ => null,
    };

    /// <summary>Whether a report is about readings of this chain, as grave as the doubted one asks for.</summary>
    public bool IsIn(ReportOpened report) =>
        report.Resident == Resident && (Urgency is not { } needed || report.Urgency >= needed) && Readings.Any(r => report.Readings.Contains(r.Id));
}
