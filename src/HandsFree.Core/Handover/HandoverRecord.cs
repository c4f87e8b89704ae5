using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Core.Rounds;

namespace HandsFree.Core.Handover;

/// <summary>What a handover is made of.</summary>
/// <param name="Journal">All events that the present needs, oldest first.</param>
/// <param name="Roster">The residents.</param>
/// <param name="Round">What the home's round takes.</param>
/// <param name="Clock">When the shifts begin.</param>
/// <param name="Time">From when on the lists count where nobody says it, and now.</param>
public sealed record HandoverRecord(IEnumerable<JournalEvent> Journal, Roster Roster, RoundPlan Round, ShiftClock Clock, HandoverTime Time)
{
    /// <summary>The handover from a beginning on.</summary>
    public HandoverView View(DateTimeOffset? since) => HandoverView.From(Journal, Roster, Round, Time with { Since = since });
}
