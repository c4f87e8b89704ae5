namespace HandsFree.Core.Journal;

/// <summary>A recovery key was made and shown once; one made before unlocks no more.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who did it.</param>
/// <param name="At">When.</param>
public sealed record RecoveryKeyMade(string Id, string Person, DateTimeOffset At) : JournalEvent(Id, Person, At);
