using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Journal.Amending;

/// <summary>With what an amendment is made.</summary>
/// <param name="Journal">All events that matter, oldest first.</param>
/// <param name="Roster">The residents.</param>
/// <param name="Rules">The rules in force.</param>
/// <param name="Person">Who amends.</param>
/// <param name="At">When.</param>
/// <param name="NextId">Gives an id that no event has.</param>
/// <param name="Reason">Why, in the person's words.</param>
public sealed record AmendmentContext(
    IReadOnlyList<JournalEvent> Journal, Roster Roster, IRulebook Rules, string Person, DateTimeOffset At, Func<string> NextId, string Reason);
