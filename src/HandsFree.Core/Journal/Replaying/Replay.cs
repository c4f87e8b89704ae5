using System.Collections.Immutable;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Journal.Replaying;

/// <summary>Decides every reading of a journal again, with the rules of its day and with today's. Symptoms that were asked for are not in
/// the record: a decision counts as the same if one of the answers makes it so. The residents and their ordered limits are those of the
/// reading's day, where the journal keeps them (since 26 November 2026), else today's.</summary>
/// <param name="today">The rules in force.</param>
/// <param name="roster">Today's residents.</param>
/// <param name="read">Reads a roster that was kept, content included; null where it can't be read.</param>
public sealed class Replay(IRulebook today, Roster roster, Func<RosterKept, Roster?> read)
{
    private const int MostRechecks = 2;

    private static readonly ImmutableHashSet<string>[] Answers =
        [[], ["short of breath"], ["chest pain", "headache", "weakness"], [.. Symptoms.All]];

    private readonly Dictionary<string, IRulebook?> rules = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<ReadingRecorded>> earlier = new(StringComparer.Ordinal);
    private readonly Dictionary<(string, VitalSign), int> rechecks = [];
    private readonly Dictionary<string, Roster?> rosters = new(StringComparer.Ordinal);
    private readonly List<JournalEvent> plans = [];
    private Roster? ofTheDay;

    /// <summary>Takes the next event.</summary>
    /// <returns>The reading, decided again; null where the event is none.</returns>
    public ReplayedReading? Take(long sequence, JournalEvent happened)
    {
        switch (happened)
        {
            case RulesKept kept:
                rules[kept.Hash] = kept.Load().Rulebook;
                return null;
            case RosterKept kept:
                if (kept.Content is not null)
                {
                    rosters[kept.Hash] = read(kept);
                }

                ofTheDay = rosters.GetValueOrDefault(kept.Hash);
                return null;
            case PlanMade:
                plans.Add(happened);
                return null;
            case EnteredInError gone when plans.RemoveAll(p => p.Id == gone.Event) > 0:
                return null;
            case EnteredInError gone when earlier.TryGetValue(gone.Resident, out var readings):
                readings.RemoveAll(r => r.Id == gone.Event);
                return null;
            case RecheckAsked asked:
                rechecks[(asked.Resident, asked.Sign)] = rechecks.GetValueOrDefault((asked.Resident, asked.Sign)) + 1;
                return null;
            case ReadingRecorded reading:
                return Decide(sequence, reading);
            default:
                return null;
        }
    }

    private ReplayedReading Decide(long sequence, ReadingRecorded reading)
    {
        if (!earlier.TryGetValue(reading.Resident, out List<ReadingRecorded>? readings))
        {
            earlier[reading.Resident] = readings = [];
        }

        (string, VitalSign) sign = (reading.Resident, reading.Confirmed.Reading.Value.Sign);
        if (!reading.IsRecheck)
        {
            rechecks.Remove(sign);
        }

        Resident? resident = Planned(roster);
        Resident? then = Planned(ofTheDay ?? roster);
        rules.TryGetValue(reading.Decision.RulesHash, out IRulebook? rulesThen);
        Decision? again = then is null || rulesThen is null ? null : With(rulesThen, then, reading, readings, rechecks.GetValueOrDefault(sign));
        Decision? now = resident is null ? null : With(today, resident, reading, readings, rechecks.GetValueOrDefault(sign));
        readings.RemoveAll(r => r.Id == reading.Amends);
        readings.Add(reading);
        return new ReplayedReading(sequence, reading, again, now, ofTheDay is not null);

        Resident? Planned(Roster of) => of.ById(reading.Resident)?.WithPlans(plans, reading.Confirmed.By.MeasuredAt);
    }

    private static Decision With(IRulebook rules, Resident resident, ReadingRecorded reading, List<ReadingRecorded> readings, int rechecks)
    {
        PastReading[] past =
        [
            .. readings.Where(r => r.Id != reading.Amends)
                .Select(r => new PastReading(r.Confirmed.Reading, r.Confirmed.By.MeasuredAt)).OrderBy(p => p.MeasuredAt),
        ];
        Decision[] decisions =
        [
            .. Answers.Select(symptoms => rules.Decide(
                reading.Confirmed.Reading,
                new DecisionContext(resident, past, Math.Min(rechecks, MostRechecks), reading.Confirmed.By.MeasuredAt, symptoms))),
        ];
        return decisions.FirstOrDefault(d => d.Outcome == reading.Decision.Outcome) ?? decisions[0];
    }
}
