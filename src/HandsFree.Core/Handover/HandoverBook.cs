using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rounds;

namespace HandsFree.Core.Handover;

/// <summary>A journal sorted by resident, for the handover: one pass over the events, then one resident at a time.</summary>
internal sealed class HandoverBook
{
    private readonly HandoverTime time;
    private readonly RoundPlan round;
    private readonly DateTimeOffset? last;
    private readonly HashSet<string> inError = [];
    private readonly HashSet<string> replaced = [];
    private readonly Dictionary<string, ReadingRecorded> corrected = [];
    private readonly Dictionary<string, List<JournalEvent>> byResident = [];
    private readonly Dictionary<string, List<Report>> reports = [];
    private readonly Dictionary<string, List<PlanMade>> plans = [];
    private readonly Dictionary<string, List<RecheckChain>> waiting = [];
    private readonly HashSet<string> amended = [];
    private readonly bool hasBefore;

    public HandoverBook(IEnumerable<JournalEvent> journal, RoundPlan round, HandoverTime time)
    {
        this.time = time;
        this.round = round;
        ReportBook book = new();
        Dictionary<string, ReadingRecorded> readings = [];
        List<JournalEvent> all = [.. journal];
        foreach (JournalEvent happened in all)
        {
            book.Add(happened);
            last = happened.At;
            hasBefore |= time.Since is { } since && happened.At < since;
            switch (happened)
            {
                case ReadingRecorded e:
                    readings.TryAdd(e.Id, e);
                    Add(byResident, e.Resident, e);
                    if (e.Amends is { } was)
                    {
                        replaced.Add(was);
                    }

                    break;
                case NotTakenRecorded e:
                    Add(byResident, e.Resident, e);
                    break;
                case LeftOpen e:
                    Add(byResident, e.Resident, e);
                    break;
                case EnteredInError e:
                    inError.Add(e.Event);
                    break;
                case PlanWithdrawn e:
                    inError.Add(e.Plan);
                    break;
                case PlanMade e:
                    Add(plans, e.Resident, e);
                    break;
                case ReadingAmended e:
                    Amended(e, readings);
                    break;
                default:
                    break;
            }
        }

        // An amendment that was itself entered in error replaces nothing.
        replaced.ExceptWith(readings.Values.Where(r => r.Amends is not null && inError.Contains(r.Id)).Select(r => r.Amends!));
        foreach (Report report in book.All)
        {
            Add(reports, report.Resident, report);
        }

        foreach (RecheckChain chain in RecheckChains.Waiting(all))
        {
            Add(waiting, chain.Resident, chain);
        }
    }

    /// <summary>The residents of whom a report is open or a recheck waits.</summary>
    public IEnumerable<string> WithSomethingOpen => reports.Where(r => r.Value.Exists(report => report.IsOpen)).Select(r => r.Key).Union(waiting.Keys);

    private DateTimeOffset? At => time.Now ?? last;

    /// <summary>What there is of one resident.</summary>
    public HandoverEntry Entry(Resident resident)
    {
        List<JournalEvent> standing = [.. Of(byResident, resident.Id).Where(e => !inError.Contains(e.Id) && !replaced.Contains(e.Id))];
        List<JournalEvent> events = [.. standing.Where(IsIn)];
        List<Report> all = Of(reports, resident.Id);
        List<Report> open = [.. all.Where(r => r.IsOpen).OrderByDescending(r => r.Urgency).ThenBy(r => r.At)];
        HashSet<string> reported = [.. open.SelectMany(r => r.Readings), .. Of(waiting, resident.Id).SelectMany(c => c.Readings).Select(r => r.Id)];
        List<ReadingRecorded> readings = [.. standing.OfType<ReadingRecorded>().Where(r => IsIn(r) || reported.Contains(r.Id))];
        Dictionary<VitalSign, int> lastTaken = [];
        for (int i = 0; i < events.Count; i++)
        {
            if (events[i] is ReadingRecorded taken)
            {
                lastTaken[taken.Confirmed.Reading.Value.Sign] = i;
            }
        }

        int lastOfAny = lastTaken.Count == 0 ? -1 : lastTaken.Values.Max();
        bool Waits(VitalSign? sign, int at) => (sign is { } one ? lastTaken.GetValueOrDefault(one, -1) : lastOfAny) < at;
        // Whenever they were asked for: time does not do a recheck.
        List<RecheckAsked> rechecks = [.. Of(waiting, resident.Id).Select(c => c.Waiting!)];
        List<NotTakenRecorded> notTaken = [.. events.Where((e, i) => e is NotTakenRecorded not && Waits(not.Sign, i)).Cast<NotTakenRecorded>()];
        List<LeftOpen> leftOpen = [.. events.Where((e, i) => e is LeftOpen left && Waits(left.Sign, i)).Cast<LeftOpen>()];
        HashSet<VitalSign> said = [.. lastTaken.Keys, .. notTaken.Select(n => n.Sign).OfType<VitalSign>(), .. leftOpen.Select(o => o.Sign)];
        List<VitalSign> stillDue = notTaken.Exists(n => n.Sign is null) ? [] : [.. Due(resident, standing).Where(sign => !said.Contains(sign))];
        List<PlanMade> planned = [.. Of(plans, resident.Id).Where(p => !inError.Contains(p.Id) && (time.Now is not { } now || now < p.Until)).Reverse()];
        List<Report> acknowledged = [.. all.Where(r => !r.IsOpen && (IsIn(r.Acknowledged) || r.Plans.Any(planned.Contains)))];
        HandoverRank rank = true switch
        {
            _ when open.Exists(r => r.Urgency == ReportUrgency.Now) => HandoverRank.ReportNow,
            _ when open.Count > 0 => HandoverRank.ReportThisShift,
            _ when rechecks.Count > 0 => HandoverRank.RecheckWaiting,
            _ when acknowledged.Count > 0 => HandoverRank.Acknowledged,
            _ when notTaken.Count > 0 => HandoverRank.NotTaken,
            _ when leftOpen.Count > 0 => HandoverRank.LeftOpen,
            _ when stillDue.Count > 0 && said.Count == 0 => HandoverRank.NothingYet,
            _ when stillDue.Count > 0 => HandoverRank.Begun,
            _ => HandoverRank.InOrder,
        };
        return new HandoverEntry(resident, rank, open, rechecks, notTaken, leftOpen, Last(events.OfType<ReadingRecorded>()), readings)
        {
            StillDue = stillDue,
            Away = At is { } at && resident.Away?.On(DateOnly.FromDateTime(at.DateTime)) == true ? resident.Away : null,
            Acknowledged = acknowledged,
            Plans = planned,
            LastEver = Last(standing.OfType<ReadingRecorded>()),
            IsNew = IsNew(resident, standing),
            IsChanged = IsChanged(resident, events, all),
            IsOverdue = IsOverdue(open, rechecks),
            CorrectedFrom = corrected,
            Now = time.Now,
        };
    }

    // Who is no longer on the roster has room 0: nothing is due of her.
    private IReadOnlyList<VitalSign> Due(Resident resident, List<JournalEvent> standing) => resident.Room == 0 ? []
        : At is { } at ? DueList.Of(resident, round.Signs, standing, at)
        : round.Signs;

    private bool IsIn(JournalEvent? happened) => happened is not null && (time.Since is not { } since || happened.At >= since);

    private bool IsNew(Resident resident, List<JournalEvent> standing) =>
        (time.Now is { } now && Roster.CameLately(resident, DateOnly.FromDateTime(now.DateTime)))
        || (hasBefore && standing is [var first, ..] && IsIn(first));

    private bool IsChanged(Resident resident, List<JournalEvent> events, List<Report> all) => time.Since is not null
        && (amended.Contains(resident.Id)
            || events.Exists(e => e is ReadingRecorded { Decision: { Outcome: not Rules.Outcome.Accept } or { Recheck: not null } })
            || all.Exists(r => IsIn(r.Opened) || IsIn(r.Acknowledged) || IsIn(r.Closed) || r.Told.Any(IsIn) || r.Notes.Any(IsIn) || r.Plans.Any(IsIn)));

    private bool IsOverdue(List<Report> open, List<RecheckAsked> rechecks) => time.Now is { } now
        && (open.Exists(r => r.IsOverdue(time.Overdue, now)) || rechecks.Exists(r => now - r.DueAt > time.Overdue.Recheck));

    private void Amended(ReadingAmended e, Dictionary<string, ReadingRecorded> readings)
    {
        if (IsIn(e))
        {
            amended.Add(e.Resident);
            amended.UnionWith(e.MovedTo is { } to ? [to] : []);
        }

        if (e is { Kind: AmendmentKind.CorrectedValue, Event: { } was, Becomes: { } becomes } && readings.TryGetValue(was, out ReadingRecorded? before))
        {
            corrected.TryAdd(becomes, before);
        }
    }

    private static Dictionary<VitalSign, ReadingRecorded> Last(IEnumerable<ReadingRecorded> readings)
    {
        Dictionary<VitalSign, ReadingRecorded> last = [];
        foreach (ReadingRecorded reading in readings)
        {
            VitalSign sign = reading.Confirmed.Reading.Value.Sign;
            if (!last.TryGetValue(sign, out ReadingRecorded? before) || before.Confirmed.By.MeasuredAt <= reading.Confirmed.By.MeasuredAt)
            {
                last[sign] = reading;
            }
        }

        return last;
    }

    private static List<T> Of<T>(Dictionary<string, List<T>> sorted, string resident) => sorted.GetValueOrDefault(resident) ?? [];

    private static void Add<T>(Dictionary<string, List<T>> sorted, string resident, T item)
    {
        if (!sorted.TryGetValue(resident, out List<T>? items))
        {
            sorted[resident] = items = [];
        }

        items.Add(item);
    }
}
