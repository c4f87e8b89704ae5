namespace HandsFree.Exchange.Fhir;

/// <summary>The systems of the home's own identifiers, so that another program knows whose numbers they are.</summary>
/// <param name="Residents">A resident's number: the one that the receiver has for its patients.</param>
/// <param name="People">The id of an aide or nurse.</param>
/// <param name="Places">A room or bed.</param>
public sealed record IdentifierSystems(string Residents, string People, string Places)
{
    /// <summary>Systems of this home alone, where it names none. No other program knows a resident by them.</summary>
    public static IdentifierSystems Own(FhirIds ids) => new(ids.Urn("residents"), ids.Urn("people"), ids.Urn("places"));
}
