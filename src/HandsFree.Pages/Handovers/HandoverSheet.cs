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
    /// <param name="roster">The residents.</param>
    /// <param name="rules">Say the limits.</param>
    /// <param name="unit">The only unit that is to be on it, or null for all. Who is no longer on the roster and has an open report is on it always.</param>
    public static HandoverSheet Of(SheetFacts facts, IReadOnlyList<JournalEvent> journal, Roster roster, Rulebook rules, string? unit = null)
    {
        HandoverView view = HandoverView.From(journal, roster, facts.Round, new HandoverTime(facts.Since, facts.At) { Overdue = facts.Overdue });
        List<HandoverEntry> entries = [.. view.Entries.Where(e => unit is null || !IsOnRoster(e.Resident) || string.Equals(e.Resident.Unit, unit, StringComparison.OrdinalIgnoreCase))];
        IReadOnlyDictionary<string, ResidentRecord> records = ResidentRecord.Of(journal, entries.Select(e => e.Resident), rules, facts.At);
        SheetMaking making = new(facts, records);
        return new(facts, [.. entries.GroupBy(e => e.Resident.Unit, StringComparer.OrdinalIgnoreCase)
            .OrderBy(group => group.Key is null).ThenBy(group => group.Key, StringComparer.OrdinalIgnoreCase)
            .Select(group => making.Unit(group.Key, [.. group]))]);
    }

    /// <summary>The view gives those who have left the room 0.</summary>
    internal static bool IsOnRoster(Resident resident) => resident.Room > 0;
}
