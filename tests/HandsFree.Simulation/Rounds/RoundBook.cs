using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Simulation.Bodies;

namespace HandsFree.Simulation.Rounds;

/// <summary>All rounds of the record, day after day.</summary>
internal sealed class RoundBook(SimulationPlan plan, IRulebook rules, Roster roster, IReadOnlyDictionary<string, Body> bodies)
{
    private static readonly VitalSign[] Daily =
        [VitalSign.Temperature, VitalSign.Pulse, VitalSign.Respirations, VitalSign.BloodPressure, VitalSign.OxygenSaturation];

    private readonly Dictionary<string, Chart> charts = roster.Residents.ToDictionary(r => r.Id, r => new Chart(r));

    /// <summary>The events, oldest first, up to the end of the plan.</summary>
    public IEnumerable<JournalEvent> Events()
    {
        List<JournalEvent> waiting = [];
        DateTime last = TimeZoneInfo.ConvertTime(plan.Until, plan.Zone).Date;
        for (int back = plan.Days - 1; back >= 0; back--)
        {
            DateTime day = last.AddDays(-back);
            foreach (ShiftRound round in ShiftRound.OfDay)
            {
                waiting.AddRange(roster.Units.SelectMany(unit => Round(unit, round, day)));
            }

            // What comes after midnight (a later recheck, a nurse who reads in the evening) is written on its own day.
            DateTimeOffset midnight = Local(day.AddDays(1));
            foreach (JournalEvent happened in waiting.Where(e => e.At < midnight && e.At <= plan.Until).OrderBy(e => e.At))
            {
                yield return happened;
            }

            waiting.RemoveAll(e => e.At < midnight);
        }
    }

    private IEnumerable<JournalEvent> Round(string unit, ShiftRound round, DateTime day)
    {
        string session = FormattableString.Invariant($"sim-{day:yyyyMMdd}-{round.Name}-{unit.ToLowerInvariant()}");
        string aide = $"aide-{unit.ToLowerInvariant()}-{round.Name}";
        int written = 0;
        string NextId() => FormattableString.Invariant($"{session}-{++written}");
        DateTimeOffset at = Local(day + round.Begins);
        List<JournalEvent> events = [];
        foreach (Resident resident in roster.Residents.Where(r => r.Unit == unit))
        {
            Body body = bodies[resident.Id];
            if (at > plan.Until || !(round.OfAll || body.IsWatched(at)))
            {
                continue;
            }

            Chance chance = Chance.Of(plan.Seed, "visit", resident.Id, session);
            events.AddRange(new VisitWriter(rules, charts[resident.Id], body, aide, chance, plan.Zone, NextId).Write(Due(resident, body, round, day), at));
            at = at.AddMinutes(chance.Between(5, 9));
        }

        return events.Count == 0
            ? []
            : [new RoundStarted(NextId(), aide, Local(day + round.Begins), rules.Hash), .. events, new RoundEnded(NextId(), aide, at)];
    }

    /// <summary>Weights are due once a month, once a week with heart failure; pain is said now and then.</summary>
    private VitalSign[] Due(Resident resident, Body body, ShiftRound round, DateTime day)
    {
        int number = int.Parse(resident.Id, System.Globalization.CultureInfo.InvariantCulture);
        bool weight = round.OfAll && (body.Usual.HeartFailure ? (int)day.DayOfWeek == number % 7 : day.Day == 1 + (number % 28));
        bool pain = Chance.Of(plan.Seed, "pain", resident.Id, day.DayOfYear, round.Name).Happens(0.04);
        return [.. Daily, .. weight ? [VitalSign.Weight] : Array.Empty<VitalSign>(), .. pain ? [VitalSign.Pain] : Array.Empty<VitalSign>()];
    }

    private DateTimeOffset Local(DateTime local) => new(local, plan.Zone.GetUtcOffset(local));
}
