using System.Collections.Immutable;
using HandsFree.Core.Observations;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Journal;

/// <summary>What is known of a resident when a reading of hers is decided: the one place where a <see cref="DecisionContext"/> is made
/// from a journal. Her orders with the plans that stood when it was measured, and the readings that stand.</summary>
/// <remarks>Clocks jump. What was entered before a reading was not measured after it, and what was taken at the same visit belongs to it,
/// whatever the clock showed: <see cref="Timed"/>.</remarks>
public static class DecisionContexts
{
    /// <summary>For a reading that is not in the journal yet: all that is there was entered before it.</summary>
    /// <param name="journal">All events that matter, oldest first.</param>
    /// <param name="resident">The resident as she is on the roster, without plans.</param>
    /// <param name="measuredAt">When it was measured.</param>
    /// <param name="rechecks">How many rechecks of it were asked for.</param>
    /// <param name="symptoms">Symptoms that were said.</param>
    /// <param name="late">Measured before this visit and entered in it.</param>
    /// <param name="without">Ids of readings that it takes the place of.</param>
    public static DecisionContext New(
        IEnumerable<JournalEvent> journal, Resident resident, DateTimeOffset measuredAt, int rechecks, IReadOnlySet<string> symptoms,
        bool late = false, IReadOnlySet<string>? without = null)
    {
        List<JournalEvent> hers = Concerning(journal, resident.Id);
        return new(
            resident.WithPlans(hers, measuredAt),
            Earlier(hers, hers.Count, resident.Id, measuredAt, late, without ?? ImmutableHashSet<string>.Empty),
            rechecks, measuredAt, symptoms);
    }

    /// <summary>For a reading of the journal that is decided again: what was entered after it counts where it was measured before.</summary>
    /// <param name="journal">All events that matter, oldest first, the reading among them.</param>
    /// <param name="resident">The resident as she is on the roster, without plans.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="rechecks">How many rechecks of it were asked for.</param>
    /// <param name="symptoms">Symptoms that were said.</param>
    public static DecisionContext Again(
        IEnumerable<JournalEvent> journal, Resident resident, ReadingRecorded reading, int rechecks, IReadOnlySet<string> symptoms)
    {
        Attribution by = reading.Confirmed.By;
        List<JournalEvent> hers = Concerning(journal, resident.Id);
        return new(
            resident.WithPlans(hers, by.MeasuredAt),
            Earlier(hers, hers.FindIndex(e => e.Id == reading.Id), resident.Id, by.MeasuredAt, by.Late || reading.Amends is not null, ImmutableHashSet.Create(reading.Id)),
            rechecks, by.MeasuredAt, symptoms);
    }

    private static List<JournalEvent> Concerning(IEnumerable<JournalEvent> journal, string resident) =>
        [.. journal.Where(e => e.ResidentId() == resident || e is ReportAcknowledged or ResidentIdentified or RoundStarted or RoundResumed or SessionLocked)];

    private static ImmutableList<PastReading> Earlier(
        List<JournalEvent> journal, int entered, string resident, DateTimeOffset at, bool late, IReadOnlySet<string> without)
    {
        Func<ReadingRecorded, bool> isUsual = PastReadings.Usual(journal, resident);
        List<ReadingRecorded> standing = [.. PastReadings.Standing(journal).Where(r => r.Resident == resident && !without.Contains(r.Id))];
        HashSet<string> before = [.. journal.Take(entered).OfType<ReadingRecorded>().Where(r => r.Resident == resident).Select(r => r.Id)];
        HashSet<string> visit = late ? [] : Visit(journal, entered, resident);
        return [.. Timed(standing, before, visit, at).Select(t => new PastReading(t.Reading.Confirmed.Reading, t.At) { CountsAsUsual = isUsual(t.Reading) })
            .Concat(PastReadings.Imported(journal, resident).Where(p => p.MeasuredAt <= at)).OrderBy(p => p.MeasuredAt)];
    }

    /// <summary>The readings in the order in which they were measured, each with its time as the decision at <paramref name="at"/> sees
    /// it: those of the same visit last, in the order of the journal, none after the next nor an hour before it; another one that was entered
    /// before and shows a time less than an hour after the visit's first is as old as that. All else as its clock said.</summary>
    private static IEnumerable<(ReadingRecorded Reading, DateTimeOffset At)> Timed(
        List<ReadingRecorded> standing, HashSet<string> before, HashSet<string> visit, DateTimeOffset at)
    {
        List<(ReadingRecorded Reading, DateTimeOffset At)> together = [];
        DateTimeOffset next = at;
        foreach (ReadingRecorded reading in standing.Where(r => visit.Contains(r.Id)).Reverse())
        {
            DateTimeOffset shown = reading.Confirmed.By.MeasuredAt;
            next = shown > next || next - shown >= RecheckChains.OneSet ? next : shown;
            together.Insert(0, (reading, next));
        }

        return standing.Where(r => !visit.Contains(r.Id))
            .Select(r => (Reading: r, At: r.Confirmed.By.MeasuredAt))
            .Select(r => before.Contains(r.Reading.Id) && r.At > next && r.At - next < RecheckChains.OneSet ? r with { At = next } : r)
            .Concat(together)
            .OrderBy(r => r.At);
    }

    // What was taken of her since she was identified last, late entries left out; more said about a reading, or its correction, stands where
    // it stood. None where who identified her went elsewhere since. A round that was cut off and goes on with her goes on with the visit.
    private static HashSet<string> Visit(List<JournalEvent> journal, int entered, string resident)
    {
        HashSet<string> visit = [];
        string? person = null;
        bool resumed = false;
        foreach (JournalEvent happened in journal.Take(entered))
        {
            switch (happened)
            {
                case RoundResumed when happened.Person == person:
                    resumed = true;
                    break;
                case ResidentIdentified identified when identified.Resident == resident:
                    if (!resumed || identified.Person != person)
                    {
                        visit.Clear();
                    }

                    person = identified.Person;
                    resumed = false;
                    break;
                case ResidentIdentified or RoundStarted or SessionLocked when happened.Person == person:
                    visit.Clear();
                    person = null;
                    resumed = false;
                    break;
                case ReadingRecorded reading when reading.Resident == resident && person is not null:
                    if (reading.Amends is { } was ? visit.Contains(was) : !reading.Confirmed.By.Late)
                    {
                        visit.Add(reading.Id);
                    }

                    break;
                default:
                    break;
            }
        }

        return visit;
    }
}
