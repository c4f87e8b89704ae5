using HandsFree.Core.Observations;

namespace HandsFree.Core.Rules.Trials;

/// <summary>A past reading on which rules are tried.</summary>
/// <param name="Resident">The resident's id.</param>
/// <param name="Past">What was measured, and when.</param>
/// <param name="Symptoms">What was said beside it.</param>
public sealed record TrialReading(string Resident, PastReading Past, IReadOnlySet<string> Symptoms);
