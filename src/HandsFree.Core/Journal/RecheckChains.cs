using HandsFree.Core.Quantities;

namespace HandsFree.Core.Journal;

/// <summary>What the journal says of rechecks: which wait, from when they can be done, and how often one was asked for. A round that
/// was interrupted goes on with it, whoever goes on.</summary>
/// <remarks>An undone reading or recheck counts no more. A reading that was amended gives its place to the amended one, and what was
/// asked because of it counts no more. "Not taken" leaves a recheck waiting, and so
/// does a reading that was measured too early.</remarks>
public static class RecheckChains
{
    /// <summary>A reading that no rule asked for belongs to the readings before it where it was measured within this time of the last
    /// (common practice, no source).</summary>
    public static readonly TimeSpan OneSet = TimeSpan.FromHours(1);

    /// <summary>A recheck that is not done so long after it was due waits no more: the next reading is no recheck of it. The report or
    /// the handover names it (common practice, no source).</summary>
    public static readonly TimeSpan Lapse = TimeSpan.FromHours(12);

    /// <summary>The latest chain of each vital sign of a resident.</summary>
    /// <param name="journal">All events, oldest first.</param>
    /// <param name="resident">The resident's id.</param>
    /// <param name="at">Now.</param>
    public static IReadOnlyDictionary<VitalSign, RecheckChain> Of(IEnumerable<JournalEvent> journal, string resident, DateTimeOffset at) =>
        All(journal, at).Where(c => c.Resident == resident).ToDictionary(c => c.Sign);

    /// <summary>All rechecks that wait, of all residents, the one that can be done first in front.</summary>
    /// <param name="journal">All events, oldest first.</param>
    /// <param name="at">Now.</param>
    public static IReadOnlyList<RecheckChain> Waiting(IEnumerable<JournalEvent> journal, DateTimeOffset at) =>
        [.. All(journal, at).Where(c => c.Waiting is not null).OrderBy(c => c.Waiting!.DueAt)];

    private static IEnumerable<RecheckChain> All(IEnumerable<JournalEvent> journal, DateTimeOffset at)
    {
        List<JournalEvent> all = [.. journal];
        HashSet<string> gone = [.. all.OfType<EnteredInError>().Select(e => e.Event)];
        Dictionary<(string Resident, VitalSign Sign), RecheckChain> chains = [];
        foreach (JournalEvent entry in all.Where(e => !gone.Contains(e.Id)))
        {
            switch (entry)
            {
                case ReadingRecorded reading:
                    (string, VitalSign) key = (reading.Resident, reading.Confirmed.Reading.Value.Sign);
                    chains[key] = Next(chains.GetValueOrDefault(key), reading);
                    break;
                case RecheckAsked asked:
                    RecheckChain chain = chains.GetValueOrDefault((asked.Resident, asked.Sign)) ?? new(asked.Resident, asked.Sign, [], 0, null);
                    chains[(asked.Resident, asked.Sign)] = chain with { RechecksAsked = chain.RechecksAsked + 1, Waiting = asked };
                    break;
                default:
                    break;
            }
        }

        return chains.Values.Select(c => c.Waiting is { } asked && at - asked.DueAt > Lapse ? c with { Waiting = null } : c);
    }

    private static RecheckChain Next(RecheckChain? chain, ReadingRecorded reading)
    {
        VitalSign sign = reading.Confirmed.Reading.Value.Sign;
        if (chain is null)
        {
            return new(reading.Resident, sign, [reading], 0, null);
        }

        if (reading.Amends is { } amended && chain.Readings.Any(r => r.Id == amended))
        {
            bool asked = chain.Waiting?.Reading == amended;
            return chain with
            {
                Readings = [.. chain.Readings.Where(r => r.Id != amended), reading],
                RechecksAsked = chain.RechecksAsked - (asked ? 1 : 0),
                Waiting = asked ? null : chain.Waiting,
            };
        }

        if (reading.Confirmed.Reading.How.TooEarly && chain.Waiting is not null)
        {
            return chain with { Readings = [.. chain.Readings, reading] };
        }

        bool belongs = reading.IsRecheck
            || chain.Readings is [.., var last] && (reading.Confirmed.By.MeasuredAt - last.Confirmed.By.MeasuredAt).Duration() < OneSet;
        return belongs
            ? chain with { Readings = [.. chain.Readings, reading], Waiting = null }
            : new(reading.Resident, sign, [reading], 0, null);
    }
}
