using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>The vital signs in spoken words.</summary>
internal static class SignNames
{
    public static string Of(VitalSign sign) => sign switch
    {
        VitalSign.Temperature => "temperature",
        VitalSign.Pulse => "pulse",
        VitalSign.Respirations => "respirations",
        VitalSign.BloodPressure => "blood pressure",
        VitalSign.OxygenSaturation => "oxygen",
        VitalSign.Weight => "weight",
        VitalSign.Pain => "pain",
        _ => throw new ArgumentOutOfRangeException(nameof(sign), sign, "no such vital sign"),
    };

    public static string Capital(VitalSign sign) => Sentence.Capital(Of(sign));
}
