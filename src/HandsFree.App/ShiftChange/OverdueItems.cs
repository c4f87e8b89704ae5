using HandsFree.App.Homes;
using HandsFree.Core.Handover;
using HandsFree.Core.Reports;

namespace HandsFree.App.ShiftChange;

/// <summary>Which lines of a handover have waited longer than the home wants.</summary>
internal sealed class OverdueItems
{
    private readonly HashSet<(int, string?)> places;

    /// <summary>Looks at every resident once.</summary>
    public OverdueItems(HandoverView view, Overdue limits, DateTimeOffset now)
    {
        bool Waits(HandoverEntry entry) =>
            entry.Reports.Any(r => now - r.At > (r.Urgency == ReportUrgency.Now ? limits.ReportNow : limits.ReportThisShift))
            || entry.Rechecks.Any(r => now - r.DueAt > limits.Recheck);
        places = [.. view.Entries.Where(Waits).Select(entry => (entry.Resident.Room, entry.Resident.Bed))];
    }

    /// <summary>Whether something of that resident is overdue.</summary>
    public bool Has(HandoverItem item) => places.Contains((item.Room, item.Bed));
}
