using HandsFree.Core.Dialogue;

namespace HandsFree.Core.Journal;

/// <summary>A locked session was unlocked by the person whose session it is.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who.</param>
/// <param name="At">When.</param>
/// <param name="By">With what.</param>
public sealed record SessionUnlocked(string Id, string Person, DateTimeOffset At, UnlockedBy By) : JournalEvent(Id, Person, At);
