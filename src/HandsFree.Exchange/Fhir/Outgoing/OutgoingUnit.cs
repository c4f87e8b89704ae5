using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Outgoing;

/// <summary>What travels together: Observations, the Communication that rests on them, and the Provenance of all.</summary>
/// <param name="Through">The number of the entry that touched it last.</param>
/// <param name="Residents">Whose it is.</param>
/// <param name="Entries">The entries of a transaction.</param>
/// <param name="Earlier">By full URL, what an amended Observation was before: what the receiver may still have.</param>
public sealed record OutgoingUnit(
    long Through, IReadOnlyList<string> Residents, IReadOnlyList<Bundle.EntryComponent> Entries, IReadOnlyDictionary<string, IReadOnlyList<Observation>> Earlier);
