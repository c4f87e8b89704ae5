using HandsFree.Core.Residents;

namespace HandsFree.Exchange.Fhir.Incoming;

/// <summary>A limit that another system has for a resident.</summary>
/// <param name="Resident">The resident's id.</param>
/// <param name="Limit">As it would stand on the roster.</param>
/// <param name="Where">Which resource it is.</param>
public sealed record IncomingLimit(string Resident, OrderedLimit Limit, string Where);
