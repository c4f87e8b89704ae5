namespace HandsFree.Core.Journal;

/// <summary>An event in the journal that only somebody with another role, or under her own signature, could have written. It stands in the
/// record, and nothing follows from it. No program writes this; it is what reading makes of such an event.</summary>
/// <param name="Id">The event's id.</param>
/// <param name="Person">In whose name it was written.</param>
/// <param name="At">When, as it says.</param>
/// <param name="What">What kind of event it would be: "ReportAcknowledged".</param>
/// <param name="Why">Why it is not believed.</param>
public sealed record NotBelieved(string Id, string Person, DateTimeOffset At, string What, string Why) : JournalEvent(Id, Person, At);
