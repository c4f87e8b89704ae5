using HandsFree.Core.Observations;

namespace HandsFree.Exchange.Fhir.Incoming;

/// <summary>A reading that another system recorded.</summary>
/// <param name="Resident">The resident's id.</param>
/// <param name="Reading">The reading.</param>
/// <param name="At">When it was measured.</param>
/// <param name="Where">Which resource or line it is.</param>
public sealed record IncomingReading(string Resident, Reading Reading, DateTimeOffset At, string Where);
