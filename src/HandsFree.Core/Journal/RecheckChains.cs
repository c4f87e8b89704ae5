using HandsFree.Core.Quantities;

namespace HandsFree.Core.Journal;

/// <summary>What the journal says of rechecks: which wait, from when they can be done, and how often one was asked for. A round that
/// was interrupted goes on with it, whoever goes on.</summary>
/// <remarks>A recheck that was asked for waits until a person has dealt with it: the sign was measured again, a nurse acknowledged the
/// report on it, or the reading that raised the doubt was entered in error or amended. Time alone never ends it, and neither does "not
/// taken", a late entry of something measured before, or a reading before the time for which it was asked. An undone reading or recheck counts no more. A reading that was amended gives its
/// place to the amended one, and what was asked because of it counts no more.</remarks>
public static class RecheckChains
{
    /// <summary>A reading that no rule asked for belongs to the readings before it where it was measured within this time of the last
    /// (common practice, no source).</summary>
    public static readonly TimeSpan OneSet = TimeSpan.FromHours(1);

    /// <summary>The latest chain of each vital sign of a resident.</summary>
    /// <param name="journal">All events, oldest first.</param>
    /// <param name="resident">The resident's id.</param>
    public static IReadOnlyDictionary<VitalSign, RecheckChain> Of(IEnumerable<JournalEvent> journal, string resident) =>
        All(journal).Where(c => c.Resident == resident).ToDictionary(c => c.Sign);

    /// <summary>All rechecks that wait, of all residents, the one that can be done first in front.</summary>
    /// <param name="journal">All events, oldest first.</param>
    public static IReadOnlyList<RecheckChain> Waiting(IEnumerable<JournalEvent> journal) =>
        [.. All(journal).Where(c => c.Waiting is not null).OrderBy(c => c.Waiting!.DueAt)];

    private static IEnumerable<RecheckChain> All(IEnumerable<JournalEvent> journal)
    {
        List<JournalEvent> all = [.. journal];
        HashSet<string> gone = [.. all.OfType<EnteredInError>().Select(e => e.Event)];
        Dictionary<(string Resident, VitalSign Sign), RecheckChain> chains = [];
        foreach (JournalEvent entry in all.Where(e => !gone.Contains(e.Id) && !(e is RecheckAsked { Reading: var doubted } && gone.Contains(doubted))))
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

        // A nurse has the doubted value in hand: what she wants measured again she says.
        HashSet<string> acknowledged = [.. all.OfType<ReportAcknowledged>().Select(a => a.Report)];
        List<ReportOpened> inHand = [.. all.OfType<ReportOpened>().Where(r => acknowledged.Contains(r.Id) && !gone.Contains(r.Id))];
        return chains.Values.Select(c => c.Waiting is not null && inHand.Exists(c.IsIn) ? c with { Waiting = null } : c);
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

        if (chain.Doubted is { } doubted && !reading.IsRecheck && reading.Confirmed.By.MeasuredAt < doubted.Confirmed.By.MeasuredAt)
        {
            // Entered late, measured before: it says nothing of the doubt.
            return chain;
        }

        bool belongs = reading.IsRecheck
            || chain.Readings is [.., var last] && (reading.Confirmed.By.MeasuredAt - last.Confirmed.By.MeasuredAt).Duration() < OneSet;
        return belongs
            ? chain with { Readings = [.. chain.Readings, reading], Waiting = null }
            : new(reading.Resident, sign, [reading], 0, null);
    }
}
