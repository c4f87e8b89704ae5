using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Codes;

/// <summary>Makes R4's codes and quantities.</summary>
internal static class Concepts
{
    public static CodeableConcept Of(string system, string code, string display, string? text = null) => new(system, code, display, text);

    public static CodeableConcept Snomed((string Code, string Display) concept) => Of(FhirSystems.Snomed, concept.Code, concept.Display);

    public static CodeableConcept Loinc(string code) => Of(FhirSystems.Loinc, code, VitalCodes.Others[code].Display);

    public static Quantity Quantity(decimal value, string ucum, string unit) => new() { Value = value, Unit = unit, System = FhirSystems.Ucum, Code = ucum };

    /// <summary>The codes of a system in a concept.</summary>
    public static IEnumerable<string> CodesOf(this CodeableConcept? concept, string system) =>
        concept?.Coding.Where(c => c.System == system && c.Code is not null).Select(c => c.Code!) ?? [];
}
