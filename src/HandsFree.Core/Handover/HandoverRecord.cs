using HandsFree.Core.Journal;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Handover;

/// <summary>What a handover is made of.</summary>
/// <param name="Journal">All events that the present needs, oldest first.</param>
/// <param name="Roster">The residents.</param>
/// <param name="Clock">When the shifts begin.</param>
/// <param name="Time">From when on the lists count where nobody says it, and now.</param>
public sealed record HandoverRecord(IEnumerable<JournalEvent> Journal, Roster Roster, ShiftClock Clock, HandoverTime Time)
{
    /// <summary>The handover from a beginning on.</summary>
    public HandoverView View(DateTimeOffset? since) => HandoverView.From(Journal, Roster, Time with { Since = since });
}
