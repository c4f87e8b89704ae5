namespace HandsFree.Core.Quantities;

/// <summary>The vital signs that a round records.</summary>
public enum VitalSign
{
    /// <summary>Body temperature, LOINC 8310-5.</summary>
    Temperature,

    /// <summary>Heart rate counted as pulse, LOINC 8867-4.</summary>
    Pulse,

    /// <summary>Respiratory rate, LOINC 9279-1.</summary>
    Respirations,

    /// <summary>Blood pressure panel, LOINC 85354-9.</summary>
    BloodPressure,

    /// <summary>Oxygen saturation by pulse oximetry, LOINC 2708-6 with 59408-5.</summary>
    OxygenSaturation,

    /// <summary>Body weight, LOINC 29463-7.</summary>
    Weight,

    /// <summary>Pain severity, spoken 0 to 10, LOINC 72514-3.</summary>
    Pain,
}
