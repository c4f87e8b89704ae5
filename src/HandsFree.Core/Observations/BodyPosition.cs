namespace HandsFree.Core.Observations;

/// <summary>The resident's position during a reading.</summary>
public enum BodyPosition
{
    /// <summary>SNOMED CT 33586001.</summary>
    Sitting,

    /// <summary>Supine, SNOMED CT 40199007.</summary>
    Lying,

    /// <summary>SNOMED CT 10904000.</summary>
    Standing,
}
