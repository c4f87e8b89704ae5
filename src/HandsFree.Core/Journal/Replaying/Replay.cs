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
    private readonly Dictionary<string, List<JournalEvent>> events = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> reported = new(StringComparer.Ordinal);
    private readonly Dictionary<(string, VitalSign), int> rechecks = [];
    private readonly Dictionary<string, Roster?> rosters = new(StringComparer.Ordinal);
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
            case ReadingRecorded reading:
                ReplayedReading again = Decide(sequence, reading);
                Of(reading.Resident).Add(reading);
                return again;
            case RecheckAsked asked:
                rechecks[(asked.Resident, asked.Sign)] = rechecks.GetValueOrDefault((asked.Resident, asked.Sign)) + 1;
                return null;
            case ReportOpened report:
                reported[report.Id] = report.Resident;
                Of(report.Resident).Add(report);
                return null;
            case ReportAcknowledged acknowledged when reported.TryGetValue(acknowledged.Report, out string? resident):
                Of(resident).Add(acknowledged);
                return null;
            case PlanMade or PlanWithdrawn or EnteredInError or ResidentIdentified:
                Of(happened.ResidentId()!).Add(happened);
                return null;
            default:
                return null;
        }
    }

    private List<JournalEvent> Of(string resident)
    {
        if (!events.TryGetValue(resident, out List<JournalEvent>? known))
        {
            events[resident] = known = [];
        }

        return known;
    }

    private ReplayedReading Decide(long sequence, ReadingRecorded reading)
    {
        (string, VitalSign) sign = (reading.Resident, reading.Confirmed.Reading.Value.Sign);
        if (!reading.IsRecheck)
        {
            rechecks.Remove(sign);
        }

        int asked = Math.Min(rechecks.GetValueOrDefault(sign), MostRechecks);
        Resident? resident = roster.ById(reading.Resident);
        Resident? then = (ofTheDay ?? roster).ById(reading.Resident);
        rules.TryGetValue(reading.Decision.RulesHash, out IRulebook? rulesThen);
        Decision? again = then is null || rulesThen is null ? null : With(rulesThen, then, reading, asked);
        Decision? now = resident is null ? null : With(today, resident, reading, asked);
        return new ReplayedReading(sequence, reading, again, now, ofTheDay is not null);
    }

    private Decision With(IRulebook rules, Resident resident, ReadingRecorded reading, int asked)
    {
        HashSet<string> without = reading.Amends is { } amends ? [amends] : [];
        DecisionContext known = DecisionContexts.New(
            Of(reading.Resident), resident, reading.Confirmed.By.MeasuredAt, asked, Answers[0], reading.Confirmed.By.Late, without);
        Decision[] decisions = [.. Answers.Select(symptoms => rules.Decide(reading.Confirmed.Reading, known with { Symptoms = symptoms }))];
        return decisions.FirstOrDefault(d => d.Outcome == reading.Decision.Outcome) ?? decisions[0];
    }
}
