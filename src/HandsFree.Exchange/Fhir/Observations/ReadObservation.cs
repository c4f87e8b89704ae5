using HandsFree.Core.Observations;

namespace HandsFree.Exchange.Fhir.Observations;

/// <summary>What another program recorded.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="At">When it was measured.</param>
public sealed record ReadObservation(Reading Reading, DateTimeOffset At);
