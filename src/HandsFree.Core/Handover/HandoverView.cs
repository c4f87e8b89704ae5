using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Handover;

/// <summary>What the journal says at the change of shift: every resident of the roster, the exceptions first.</summary>
/// <param name="Entries">By rank, then room and bed.</param>
public sealed record HandoverView(IReadOnlyList<HandoverEntry> Entries)
{
    /// <summary>Projects the journal.</summary>
    /// <param name="journal">All events, oldest first.</param>
    /// <param name="roster">The residents; events of others are left out.</param>
    /// <param name="since">The beginning of the shift: what was taken or not taken before it is left out; open reports stay.
    /// Null for all.</param>
    public static HandoverView From(IEnumerable<JournalEvent> journal, Roster roster, DateTimeOffset? since = null)
    {
        List<JournalEvent> all = [.. journal];
        HashSet<string> gone = [.. all.OfType<EnteredInError>().Select(e => e.Event)];
        gone.UnionWith(all.OfType<ReportAcknowledged>().Select(a => a.Report));
        HashSet<string> standing = [.. PastReadings.Standing(all).Select(r => r.Id)];
        bool Counts(JournalEvent entry) =>
            !gone.Contains(entry.Id)
            && (entry is not ReadingRecorded || standing.Contains(entry.Id))
            && (since is null || entry.At >= since || entry is ReportOpened);
        ILookup<string, JournalEvent> byResident = all.Where(Counts).Where(e => ResidentOf(e) is not null).ToLookup(e => ResidentOf(e)!);
        Dictionary<string, ReadingRecorded> corrected = CorrectedFrom(all);
        ILookup<string, ReportNoted> notes = all.OfType<ReportNoted>().ToLookup(n => n.Resident);
        return new HandoverView([.. roster.Residents
            .Select(r => Entry(r, [.. byResident[r.Id]]) with { CorrectedFrom = corrected, Notes = [.. notes[r.Id]] })
            .OrderBy(e => e.Rank).ThenBy(e => e.Resident.Room).ThenBy(e => e.Resident.Bed, StringComparer.Ordinal)]);
    }

    private static Dictionary<string, ReadingRecorded> CorrectedFrom(List<JournalEvent> all)
    {
        Dictionary<string, ReadingRecorded> readings = all.OfType<ReadingRecorded>().DistinctBy(r => r.Id).ToDictionary(r => r.Id);
        return all.OfType<ReadingAmended>()
            .Where(a => a is { Kind: AmendmentKind.CorrectedValue, Event: { } was, Becomes: not null } && readings.ContainsKey(was))
            .DistinctBy(a => a.Becomes)
            .ToDictionary(a => a.Becomes!, a => readings[a.Event!]);
    }

    private static string? ResidentOf(JournalEvent entry) => entry switch
    {
        ReadingRecorded e => e.Resident,
        NotTakenRecorded e => e.Resident,
        LeftOpen e => e.Resident,
        RecheckAsked e => e.Resident,
        ReportOpened e => e.Resident,
        _ => null,
    };

    private static HandoverEntry Entry(Resident resident, IReadOnlyList<JournalEvent> events)
    {
        List<ReadingRecorded> readings = [.. events.OfType<ReadingRecorded>()];
        bool TakenLater(VitalSign? sign, JournalEvent than) =>
            readings.Any(r => (sign is null || r.Confirmed.Reading.Value.Sign == sign) && IsAfter(events, r, than));
        List<ReportOpened> reports = [.. events.OfType<ReportOpened>().OrderByDescending(r => r.Urgency).ThenBy(r => r.At)];
        List<RecheckAsked> rechecks = [.. events.OfType<RecheckAsked>().Where(r => !TakenLater(r.Sign, r))];
        List<NotTakenRecorded> notTaken = [.. events.OfType<NotTakenRecorded>().Where(n => !TakenLater(n.Sign, n))];
        List<LeftOpen> open = [.. events.OfType<LeftOpen>().Where(o => !TakenLater(o.Sign, o))];
        HandoverRank rank = true switch
        {
            _ when reports.Any(r => r.Urgency == ReportUrgency.Now) => HandoverRank.ReportNow,
            _ when reports.Count > 0 => HandoverRank.ReportThisShift,
            _ when rechecks.Count > 0 => HandoverRank.RecheckWaiting,
            _ when notTaken.Count > 0 => HandoverRank.NotTaken,
            _ when open.Count > 0 => HandoverRank.LeftOpen,
            _ when readings.Count == 0 => HandoverRank.NothingYet,
            _ => HandoverRank.InOrder,
        };
        Dictionary<VitalSign, ReadingRecorded> last = readings.GroupBy(r => r.Confirmed.Reading.Value.Sign)
            .ToDictionary(g => g.Key, g => g.OrderBy(r => r.Confirmed.By.MeasuredAt).Last());
        return new HandoverEntry(resident, rank, reports, rechecks, notTaken, open, last, readings);
    }

    private static bool IsAfter(IReadOnlyList<JournalEvent> events, JournalEvent later, JournalEvent than)
    {
        bool seen = false;
        foreach (JournalEvent entry in events)
        {
            if (ReferenceEquals(entry, later))
            {
                return seen;
            }

            seen = seen || ReferenceEquals(entry, than);
        }

        return false;
    }
}
