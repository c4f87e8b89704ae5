namespace HandsFree.Core.Observations;

/// <summary>Where a temperature was taken.</summary>
public enum TemperatureSite
{
    /// <summary>Oral cavity, SNOMED CT 74262004.</summary>
    Mouth,

    /// <summary>Axillary fossa, SNOMED CT 422543003.</summary>
    Armpit,

    /// <summary>Ear, SNOMED CT 117590005.</summary>
    Ear,

    /// <summary>Forehead, SNOMED CT 52795006.</summary>
    Forehead,

    /// <summary>Rectum, SNOMED CT 34402009.</summary>
    Rectum,
}
