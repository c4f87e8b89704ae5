using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Pages.Records;

namespace HandsFree.Pages.Handovers;

/// <summary>All that a handover page says; HTML and PDF say the same.</summary>
/// <param name="Facts">What it says of itself.</param>
/// <param name="Units">A set of pages each.</param>
public sealed record HandoverSheet(SheetFacts Facts, IReadOnlyList<UnitSheet> Units)
{
    /// <summary>How far back the small trends go: as far as the view of the present keeps everything.</summary>
    public static readonly TimeSpan TrendLength = PresentEvents.Window;

    /// <summary>Makes the sheet.</summary>
    /// <param name="facts">What it says of itself.</param>
    /// <param name="journal">The events of the present, oldest first.</param>
    /// <param name="roster">The residents that are to be on it.</param>
    /// <param name="rules">Say the limits.</param>
    public static HandoverSheet Of(SheetFacts facts, IReadOnlyList<JournalEvent> journal, Roster roster, Rulebook rules)
    {
        HandoverView view = HandoverView.From(journal, roster, facts.Since);
        IReadOnlyDictionary<string, ResidentRecord> records = ResidentRecord.Of(journal, roster.Residents, rules, facts.At);
        SheetMaking making = new(facts, records);
        return new(facts, [.. view.Entries.GroupBy(e => e.Resident.Unit, StringComparer.OrdinalIgnoreCase)
            .OrderBy(unit => unit.Key is null).ThenBy(unit => unit.Key, StringComparer.OrdinalIgnoreCase)
            .Select(unit => making.Unit(unit.Key, [.. unit]))]);
    }
}
