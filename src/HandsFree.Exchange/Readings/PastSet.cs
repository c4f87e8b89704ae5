using HandsFree.Core.Observations;

namespace HandsFree.Exchange.Readings;

/// <summary>Readings that were taken together.</summary>
/// <param name="Resident">The resident's id.</param>
/// <param name="At">When.</param>
/// <param name="Readings">In the order of the round; one at least.</param>
/// <param name="Symptoms">What was said beside them.</param>
public sealed record PastSet(string Resident, DateTimeOffset At, IReadOnlyList<Reading> Readings, IReadOnlySet<string> Symptoms);
