using HandsFree.Core.Quantities;

namespace HandsFree.Core.Journal;

/// <summary>The view of a journal that the present needs: the events that a round, the handover and the rules can still ask for, out of a
/// record of years. Everything of the last two weeks; of what is older, open reports, plans that stand, the last readings of each sign, weights of half a
/// year, who may unlock, and what amends one of these. It is made by adding event after event, and can be thrown away and made again.</summary>
public sealed class PresentEvents
{
    /// <summary>Younger than this is kept whole. Longer than any shift, and than what rules ask of earlier readings other than weights.</summary>
    public static readonly TimeSpan Window = TimeSpan.FromDays(14);

    /// <summary>Weights are kept so long: the longest rule asks for 180 days.</summary>
    public static readonly TimeSpan WeightWindow = TimeSpan.FromDays(200);

    private const int LastReadings = 3;
    private const int TrimEvery = 4096;

    // A clock that was wrong for a few events does not move the window: the earliest of the last ones counts.
    private const int LastTimes = 50;
    private static readonly TimeSpan Disorder = TimeSpan.FromHours(1);

    private readonly List<JournalEvent> events = [];
    private int atTrim;

    /// <summary>The events that are kept, oldest first.</summary>
    public IReadOnlyList<JournalEvent> Events => events;

    /// <summary>Whether the clock was set back between two events, so that something may have been left out that is present again: the
    /// view is to be made anew from the whole journal.</summary>
    public bool WentBack { get; private set; }

    /// <summary>Takes the next event of the journal. Of rules and rosters only the hash is kept.</summary>
    public void Add(JournalEvent happened)
    {
        if (happened is DialogueTold)
        {
            return; // only the round that was told it asks for it, and reads the journal
        }

        WentBack = WentBack || (events.Count > 0 && happened.At < events[^1].At - Disorder);
        events.Add(happened switch
        {
            RulesKept rules => rules with { Files = new Dictionary<string, string>() },
            RosterKept roster => roster with { Content = null },
            HomeFileKept file => file with { Content = null },
            _ => happened,
        });
        if (events.Count >= (2 * atTrim) + TrimEvery)
        {
            Trim();
        }
    }

    /// <summary>Begins with what was kept of this view before.</summary>
    /// <param name="kept">The events, oldest first, as <see cref="Events"/> gave them.</param>
    public void Restore(IReadOnlyList<JournalEvent> kept)
    {
        events.Clear();
        events.AddRange(kept);
        atTrim = events.Count;
    }

    /// <summary>Leaves out what the present does not need.</summary>
    public void Trim()
    {
        if (events.Count == 0)
        {
            return;
        }

        DateTimeOffset latest = events.TakeLast(LastTimes).Min(e => e.At);
        HashSet<string> closed = [.. events.OfType<ReportAcknowledged>().Select(a => a.Report), .. events.OfType<EnteredInError>().Select(e => e.Event)];
        List<ReportOpened> open = [.. events.OfType<ReportOpened>().Where(r => !closed.Contains(r.Id))];
        IReadOnlyList<RecheckChain> waiting = RecheckChains.Waiting(events);
        HashSet<string> kept =
        [
            .. open.Select(r => r.Id), .. open.SelectMany(r => r.Readings),
            .. waiting.Select(c => c.Waiting!.Id), .. waiting.SelectMany(c => c.Readings).Select(r => r.Id),
            .. events.OfType<PlanMade>().Where(p => p.Until > latest).Select(p => p.Id),
        ];
        foreach (var sign in PastReadings.Standing(events).GroupBy(r => (r.Resident, r.Confirmed.Reading.Value.Sign)))
        {
            ReadingRecorded[] readings = [.. sign.OrderBy(r => r.Confirmed.By.MeasuredAt)];
            kept.UnionWith(readings.TakeLast(LastReadings).Select(r => r.Id));
            kept.UnionWith(readings.Where(r => r.Confirmed.Reading.How.Uneven).TakeLast(LastReadings).Select(r => r.Id));
            if (sign.Key.Sign == VitalSign.Weight)
            {
                kept.UnionWith(readings.Where(r => latest - r.Confirmed.By.MeasuredAt <= WeightWindow).Select(r => r.Id));
            }
        }

        kept.UnionWith(events.OfType<ReadingImported>().Where(r => r.Reading.Value.Sign == VitalSign.Weight && latest - r.MeasuredAt <= WeightWindow).Select(r => r.Id));
        kept.UnionWith(Proposals.Open(events).Select(p => p.Id));
        DateTimeOffset from = latest > DateTimeOffset.MinValue + Window ? latest - Window : latest;
        // A recheck ends with the acknowledgement of its report: that is kept until no recheck which it ended can be younger than the window.
        DateTimeOffset reportsFrom = from > DateTimeOffset.MinValue + Window ? from - Window : from;
        events.RemoveAll(e => e.At < (e is ReportOpened or ReportAcknowledged ? reportsFrom : from) && !IsKept(e, kept));
        atTrim = events.Count;
    }

    private static bool IsKept(JournalEvent happened, HashSet<string> kept) => happened switch
    {
        PersonAdded or PersonRemoved or RulesKept or RosterKept or SpokenDigitsSet => true,
        EnteredInError e => kept.Contains(e.Event),
        ReadingAmended e => (e.Event is { } was && kept.Contains(was)) || (e.Becomes is { } becomes && kept.Contains(becomes)),
        PlanWithdrawn e => kept.Contains(e.Plan),
        ReportNoted e => kept.Contains(e.Report),
        ReportTold e => kept.Contains(e.Report),
        _ => kept.Contains(happened.Id),
    };
}
