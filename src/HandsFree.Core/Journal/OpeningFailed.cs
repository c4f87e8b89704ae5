namespace HandsFree.Core.Journal;

/// <summary>Somebody tried to open the journal and did not. It is written when the journal is opened next, for without a key nobody can write
/// in it.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who opened it next.</param>
/// <param name="At">When that was.</param>
/// <param name="When">When the try was, by the device's clock.</param>
/// <param name="Who">Whose PIN was tried; null where there is no such person.</param>
/// <param name="What">What was tried or found: "PIN", "recovery key".</param>
public sealed record OpeningFailed(string Id, string Person, DateTimeOffset At, DateTimeOffset When, string? Who, string What)
    : JournalEvent(Id, Person, At);
