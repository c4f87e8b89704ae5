using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Rounds;

/// <summary>What is to be taken from one resident.</summary>
public static class DueList
{
    /// <summary>The signs that are due of a resident: what the round takes, and what her own schedule asks for. Nothing is due of a
    /// resident who is away.</summary>
    /// <param name="resident">The resident.</param>
    /// <param name="round">What the round takes from everyone, in its order.</param>
    /// <param name="journal">All events, oldest first.</param>
    /// <param name="at">Now.</param>
    public static IReadOnlyList<VitalSign> Of(
        Resident resident, IReadOnlyList<VitalSign> round, IEnumerable<JournalEvent> journal, DateTimeOffset at)
    {
        if (resident.Away?.On(DateOnly.FromDateTime(at.DateTime)) == true)
        {
            return [];
        }

        Dictionary<VitalSign, ScheduledSign> own = resident.Schedule.ToDictionary(s => s.Sign);
        Lazy<IReadOnlyList<ReadingRecorded>> taken = new(() =>
            [.. PastReadings.Standing(journal).Where(r => r.Resident == resident.Id)]);
        return [.. round.Concat(own.Keys.Except(round).Order()).Where(s => !own.TryGetValue(s, out ScheduledSign? plan) || IsDue(plan, taken, at))];
    }

    /// <summary>The signs that are not settled, in the order in which the round takes them.</summary>
    /// <param name="due">All that the round takes.</param>
    /// <param name="settled">Whether a sign was saved, not taken, or left open.</param>
    public static IReadOnlyList<VitalSign> Open(IReadOnlyList<VitalSign> due, Func<VitalSign, bool> settled) => [.. due.Where(s => !settled(s))];

    // A weekly or monthly one whose day was missed stays due until it is taken.
    private static bool IsDue(ScheduledSign plan, Lazy<IReadOnlyList<ReadingRecorded>> taken, DateTimeOffset at)
    {
        DateOnly today = DateOnly.FromDateTime(at.DateTime);
        return plan.Every == Frequency.EveryShift || !taken.Value.Any(r =>
            r.Confirmed.Reading.Value.Sign == plan.Sign && DateOnly.FromDateTime(r.Confirmed.By.MeasuredAt.DateTime) >= DueSince(plan, today));
    }

    private static DateOnly DueSince(ScheduledSign plan, DateOnly today) => plan switch
    {
        { Every: Frequency.Daily } => today,
        { Every: Frequency.Weekly, Weekday: { } day } => today.AddDays(-(((int)today.DayOfWeek - (int)day + 7) % 7)),
        { Every: Frequency.Weekly } => today.AddDays(-6),
        { DayOfMonth: { } day } => day <= today.Day ? new DateOnly(today.Year, today.Month, day) : new DateOnly(today.Year, today.Month, day).AddMonths(-1),
        _ => today.AddMonths(-1).AddDays(1),
    };
}
