namespace HandsFree.Exchange.Fhir.Codes;

/// <summary>The systems of codes and identifiers, as R4 names them.</summary>
public static class FhirSystems
{
    /// <summary>LOINC.</summary>
    public const string Loinc = "http://loinc.org";

    /// <summary>UCUM.</summary>
    public const string Ucum = "http://unitsofmeasure.org";

    /// <summary>SNOMED CT; its use needs a licence or a member country.</summary>
    public const string Snomed = "http://snomed.info/sct";

    /// <summary>Categories of an Observation.</summary>
    public const string Category = "http://terminology.hl7.org/CodeSystem/observation-category";

    /// <summary>Why a value is absent.</summary>
    public const string Absent = "http://terminology.hl7.org/CodeSystem/data-absent-reason";

    /// <summary>Interpretations: N, L, H, LL, HH, A.</summary>
    public const string Interpretation = "http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation";

    /// <summary>What was done to a resource: CREATE, UPDATE, NULLIFY.</summary>
    public const string Operation = "http://terminology.hl7.org/CodeSystem/v3-DataOperation";

    /// <summary>What an agent of a Provenance did.</summary>
    public const string Participant = "http://terminology.hl7.org/CodeSystem/provenance-participant-type";

    /// <summary>The system of an identifier that is a URI itself.</summary>
    public const string Uri = "urn:ietf:rfc:3986";

    /// <summary>Types of an identifier (HL7 table 0203).</summary>
    public const string IdentifierType = "http://terminology.hl7.org/CodeSystem/v2-0203";

    /// <summary>The extension of R4's core for the position of the body.</summary>
    public const string BodyPosition = "http://hl7.org/fhir/StructureDefinition/observation-bodyPosition";

    /// <summary>Where R4's profiles begin.</summary>
    public const string Profiles = "http://hl7.org/fhir/StructureDefinition/";
}
