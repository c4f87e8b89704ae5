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

    private readonly List<JournalEvent> events = [];
    private DateTimeOffset latest = DateTimeOffset.MinValue;
    private int atTrim;

    /// <summary>The events that are kept, oldest first.</summary>
    public IReadOnlyList<JournalEvent> Events => events;

    /// <summary>Takes the next event of the journal.</summary>
    public void Add(JournalEvent happened)
    {
        events.Add(happened is RulesKept rules ? rules with { Files = new Dictionary<string, string>() } : happened);
        latest = happened.At > latest ? happened.At : latest;
        if (events.Count >= (2 * atTrim) + TrimEvery)
        {
            Trim();
        }
    }

    /// <summary>Leaves out what the present does not need.</summary>
    public void Trim()
    {
        HashSet<string> closed = [.. events.OfType<ReportAcknowledged>().Select(a => a.Report), .. events.OfType<EnteredInError>().Select(e => e.Event)];
        List<ReportOpened> open = [.. events.OfType<ReportOpened>().Where(r => !closed.Contains(r.Id))];
        HashSet<string> kept =
        [
            .. open.Select(r => r.Id), .. open.SelectMany(r => r.Readings),
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

        DateTimeOffset from = latest > DateTimeOffset.MinValue + Window ? latest - Window : latest;
        events.RemoveAll(e => e.At < from && !IsKept(e, kept));
        atTrim = events.Count;
    }

    private static bool IsKept(JournalEvent happened, HashSet<string> kept) => happened switch
    {
        PersonAdded or PersonRemoved or RulesKept => true,
        EnteredInError e => kept.Contains(e.Event),
        ReadingAmended e => (e.Event is { } was && kept.Contains(was)) || (e.Becomes is { } becomes && kept.Contains(becomes)),
        ReportNoted e => kept.Contains(e.Report),
        ReportTold e => kept.Contains(e.Report),
        _ => kept.Contains(happened.Id),
    };
}
