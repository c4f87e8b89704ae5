using HandsFree.Core.Quantities;

namespace HandsFree.Exchange.Fhir.Codes;

/// <summary>How R4 codes a vital sign.</summary>
/// <param name="Sign">Which.</param>
/// <param name="Code">The LOINC code that the profile wants.</param>
/// <param name="Display">Its name in LOINC.</param>
/// <param name="Profile">The name of R4's profile; null where it has none.</param>
/// <param name="Units">The UCUM codes that its value may have, each with the unit as people read it.</param>
public sealed record VitalCode(VitalSign Sign, string Code, string Display, string? Profile, IReadOnlyDictionary<string, string> Units)
{
    /// <summary>A second, more exact code beside the first, or null.</summary>
    public (string Code, string Display)? Beside { get; init; }

    /// <summary>Codes of older versions that mean the same, for what others send.</summary>
    public IReadOnlyList<string> Also { get; init; } = [];
}
