namespace HandsFree.Core.Journal;

/// <summary>The record, or a part of it, was taken out of the program: written into a file, or sent. It stands in the journal before
/// anything leaves.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who took it out.</param>
/// <param name="At">When.</param>
/// <param name="What">Which part in which form: "readings as CSV of all residents".</param>
/// <param name="To">The file, or the address.</param>
/// <param name="Why">Why, in the person's words.</param>
public sealed record RecordTakenOut(string Id, string Person, DateTimeOffset At, string What, string To, string Why) : JournalEvent(Id, Person, At);
