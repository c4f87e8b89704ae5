using HandsFree.Core.Quantities;

namespace HandsFree.Exchange.Fhir.Codes;

/// <summary>The table of codes and units of R4's vital-signs profiles (HL7 FHIR R4 4.0.1, vital signs; LOINC; UCUM). A validator finds no
/// unknown code and no junk unit, so this table is what a resource is held against.</summary>
public static class VitalCodes
{
    /// <summary>The vital-signs panel.</summary>
    public const string Panel = "85353-1";

    /// <summary>Systolic pressure.</summary>
    public const string Systolic = "8480-6";

    /// <summary>Diastolic pressure.</summary>
    public const string Diastolic = "8462-4";

    /// <summary>The flow of inhaled oxygen.</summary>
    public const string OxygenFlow = "3151-8";

    /// <summary>UCUM's unit of a pressure.</summary>
    public const string Pressure = "mm[Hg]";

    /// <summary>UCUM's unit of a flow.</summary>
    public const string Flow = "L/min";

    /// <summary>Every sign.</summary>
    public static IReadOnlyList<VitalCode> All { get; } =
    [
        new(VitalSign.Temperature, "8310-5", "Body temperature", "bodytemp", Units(("Cel", "°C"), ("[degF]", "°F"))),
        new(VitalSign.Pulse, "8867-4", "Heart rate", "heartrate", Units(("/min", "beats/minute"))),
        new(VitalSign.Respirations, "9279-1", "Respiratory rate", "resprate", Units(("/min", "breaths/minute"))),
        new(VitalSign.BloodPressure, "85354-9", "Blood pressure panel with all children optional", "bp", Units((Pressure, "mmHg"))) { Also = ["55284-4"] },
        new(VitalSign.OxygenSaturation, "2708-6", "Oxygen saturation in Arterial blood", "oxygensat", Units(("%", "%")))
        {
            Beside = ("59408-5", "Oxygen saturation in Arterial blood by Pulse oximetry"),
        },
        new(VitalSign.Weight, "29463-7", "Body weight", "bodyweight", Units(("kg", "kg"), ("[lb_av]", "lb"))),
        new(VitalSign.Pain, "72514-3", "Pain severity - 0-10 verbal numeric rating [Score] - Reported", null, Units(("{score}", "of 10"))),
    ];

    /// <summary>The LOINC codes that stand beside a sign's own, with their names and units.</summary>
    public static IReadOnlyDictionary<string, (string Display, string? Unit)> Others { get; } = new Dictionary<string, (string, string?)>
    {
        [Panel] = ("Vital signs, weight, height, head circumference, oxygen saturation and BMI panel", null),
        [Systolic] = ("Systolic blood pressure", Pressure),
        [Diastolic] = ("Diastolic blood pressure", Pressure),
        [OxygenFlow] = ("Inhaled oxygen flow rate", Flow),
    };

    /// <summary>The row of a sign.</summary>
    public static VitalCode Of(VitalSign sign) => All.First(row => row.Sign == sign);

    private static Dictionary<string, string> Units(params (string Code, string Text)[] units) => units.ToDictionary(u => u.Code, u => u.Text);
}
