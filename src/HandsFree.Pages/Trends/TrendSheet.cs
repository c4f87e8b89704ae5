using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Pages.Handovers;
using HandsFree.Pages.Records;

namespace HandsFree.Pages.Trends;

/// <summary>All that a trend page says; HTML and PDF say the same.</summary>
/// <param name="Facts">What it says of itself.</param>
/// <param name="Who">Room, bed, name and unit.</param>
/// <param name="Notes">Orders, oxygen, devices and what else the roster notes; one sentence each.</param>
/// <param name="Charts">One a sign.</param>
/// <param name="Rows">Every reading, the latest first.</param>
public sealed record TrendSheet(
    SheetFacts Facts, string Who, IReadOnlyList<string> Notes, IReadOnlyList<TrendChart> Charts, IReadOnlyList<TrendRow> Rows)
{
    /// <summary>Makes the sheet.</summary>
    /// <param name="facts">What it says of itself; its beginning is that of the charts.</param>
    /// <param name="journal">All events that matter, oldest first.</param>
    /// <param name="resident">Who.</param>
    /// <param name="rules">Say the limits.</param>
    public static TrendSheet Of(SheetFacts facts, IReadOnlyList<JournalEvent> journal, Resident resident, Rulebook rules)
    {
        ResidentRecord record = ResidentRecord.Of(journal, [resident], rules, facts.At)[resident.Id];
        return new TrendMaking(facts).Of(record, journal);
    }
}
