using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Outgoing;

/// <summary>A transaction.</summary>
/// <param name="Bundle">Its resources.</param>
/// <param name="Through">Once the receiver has it, it has everything of the record up to the entry of this number.</param>
/// <param name="Earlier">By full URL, what an amended Observation was before.</param>
public sealed record OutgoingBundle(Bundle Bundle, long Through, IReadOnlyDictionary<string, IReadOnlyList<Observation>> Earlier);
