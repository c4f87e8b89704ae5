namespace HandsFree.Core.Journal;

/// <summary>A person has another PIN.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who did it.</param>
/// <param name="At">When.</param>
/// <param name="Who">Whose PIN.</param>
/// <param name="ByRecoveryKey">Whether the recovery key was used.</param>
public sealed record PinChanged(string Id, string Person, DateTimeOffset At, string Who, bool ByRecoveryKey) : JournalEvent(Id, Person, At);
