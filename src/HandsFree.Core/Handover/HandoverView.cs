using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Core.Rounds;

namespace HandsFree.Core.Handover;

/// <summary>What the journal says at the change of shift: every resident of the roster, the exceptions first. A resident who is no longer on
/// the roster is on it as long as a report of hers is open or a recheck waits, in room 0.</summary>
/// <param name="Entries">By rank, then room and bed.</param>
/// <param name="Time">Of when it is.</param>
public sealed record HandoverView(IReadOnlyList<HandoverEntry> Entries, HandoverTime Time)
{
    /// <summary>Projects the journal.</summary>
    /// <param name="journal">All events, oldest first.</param>
    /// <param name="roster">The residents; of others only open reports are shown.</param>
    /// <param name="round">What the home's round takes: what is still due of a resident is on the list.</param>
    /// <param name="since">The beginning of the shift: what was taken or not taken before it is left out; open reports stay.
    /// Null for all.</param>
    public static HandoverView From(IEnumerable<JournalEvent> journal, Roster roster, RoundPlan round, DateTimeOffset? since = null) =>
        From(journal, roster, round, new HandoverTime(since));

    /// <summary>Projects the journal at a moment.</summary>
    /// <param name="journal">All events, oldest first.</param>
    /// <param name="roster">The residents; of others only open reports are shown.</param>
    /// <param name="round">What the home's round takes: what is still due of a resident is on the list.</param>
    /// <param name="time">From when on, and now.</param>
    public static HandoverView From(IEnumerable<JournalEvent> journal, Roster roster, RoundPlan round, HandoverTime time)
    {
        HandoverBook book = new(journal, round, time);
        IEnumerable<Resident> gone = book.WithSomethingOpen.Where(id => roster.ById(id) is null).Select(Gone);
        return new HandoverView(
            [
                .. roster.Residents.Concat(gone).Select(book.Entry)
                    .OrderBy(e => e.Rank).ThenBy(e => e.Resident.Room).ThenBy(e => e.Resident.Bed, StringComparer.Ordinal),
            ],
            time);
    }

    /// <summary>Who is no longer on the roster, in room 0.</summary>
    internal static Resident Gone(string id) => new() { Id = id, Name = id, Room = 0, Born = DateOnly.MinValue };
}
