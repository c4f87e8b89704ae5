using HandsFree.Core.Observations;

namespace HandsFree.Exchange.Fhir.Codes;

/// <summary>The SNOMED CT concepts that are written, each with its name (HL7, Vital Signs with Qualifying Elements).</summary>
public static class SnomedCodes
{
    /// <summary>Palpation, the method of a pulse that was counted.</summary>
    public static readonly (string Code, string Display) Palpation = ("113011001", "Palpation");

    /// <summary>Inspection, the method of breaths that were counted.</summary>
    public static readonly (string Code, string Display) Inspection = ("32750006", "Inspection");

    /// <summary>Where a temperature was taken.</summary>
    public static IReadOnlyDictionary<TemperatureSite, (string Code, string Display)> Sites { get; } = new Dictionary<TemperatureSite, (string, string)>
    {
        [TemperatureSite.Mouth] = ("74262004", "Oral cavity structure"),
        [TemperatureSite.Armpit] = ("422543003", "Axillary fossa"),
        [TemperatureSite.Ear] = ("117590005", "Ear structure"),
        [TemperatureSite.Forehead] = ("52795006", "Forehead structure"),
        [TemperatureSite.Rectum] = ("34402009", "Rectum structure"),
    };

    /// <summary>The arm of a pressure.</summary>
    public static IReadOnlyDictionary<Arm, (string Code, string Display)> Arms { get; } = new Dictionary<Arm, (string, string)>
    {
        [Arm.Left] = ("368208006", "Left upper arm structure"),
        [Arm.Right] = ("368209003", "Right upper arm structure"),
    };

    /// <summary>The position of the body.</summary>
    public static IReadOnlyDictionary<BodyPosition, (string Code, string Display)> Positions { get; } = new Dictionary<BodyPosition, (string, string)>
    {
        [BodyPosition.Sitting] = ("33586001", "Sitting position"),
        [BodyPosition.Lying] = ("40199007", "Supine body position"),
        [BodyPosition.Standing] = ("10904000", "Orthostatic body position"),
    };

    /// <summary>All codes with their names.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } =
        Sites.Values.Concat(Arms.Values).Concat(Positions.Values).Concat([Palpation, Inspection]).ToDictionary(c => c.Code, c => c.Display);
}
