using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules.Limits;

namespace HandsFree.Exchange.Fhir.Outgoing;

/// <summary>An entry with what was in force when it was written.</summary>
/// <param name="Number">Of the entry.</param>
/// <param name="Event">What happened.</param>
/// <param name="Limits">Of a reading; else none.</param>
/// <param name="Place">The resident's room and bed on that day, in words, or null.</param>
internal sealed record OutgoingEvent(long Number, JournalEvent Event, IReadOnlyDictionary<LimitedValue, ReportLimits> Limits, string? Place);
