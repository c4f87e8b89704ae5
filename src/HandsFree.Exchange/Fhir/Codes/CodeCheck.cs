using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Codes;

/// <summary>Holds a resource against our own table: what no validator finds, because it knows neither LOINC nor UCUM nor SNOMED CT.</summary>
public static class CodeCheck
{
    private static readonly HashSet<string> Units = [.. VitalCodes.All.SelectMany(row => row.Units.Keys), VitalCodes.Pressure, VitalCodes.Flow];

    private static readonly Dictionary<string, IReadOnlyDictionary<string, string>> Known = new()
    {
        [FhirSystems.Loinc] = new Dictionary<string, string>(
        [
            .. VitalCodes.All.Select(row => KeyValuePair.Create(row.Code, row.Display)),
            .. VitalCodes.All.Where(row => row.Beside is not null).Select(row => KeyValuePair.Create(row.Beside!.Value.Code, row.Beside.Value.Display)),
            .. VitalCodes.Others.Select(other => KeyValuePair.Create(other.Key, other.Value.Display)),
        ]),
        [FhirSystems.Snomed] = SnomedCodes.All,
        [FhirSystems.Absent] = AbsentReasons.All.Values.Select(r => (r.Code, r.Display)).Append(("as-text", "As Text")).Distinct().ToDictionary(r => r.Item1, r => r.Item2),
        [FhirSystems.Category] = new Dictionary<string, string> { ["vital-signs"] = "Vital Signs" },
        [FhirSystems.Interpretation] = Interpretations.Displays,
    };

    /// <summary>Everything that is wrong with codes and units; empty where all stand in the table.</summary>
    public static IReadOnlyList<string> Of(Resource resource) =>
    [
        .. Parts.Within(resource).OfType<Coding>().Where(c => c.System is not null && Known.ContainsKey(c.System)).Select(Wrong).OfType<string>(),
        .. Parts.Within(resource).OfType<Quantity>().Select(Wrong).OfType<string>(),
        .. resource is Observation observation ? Values(observation) : [],
    ];

    private static string? Wrong(Coding coding) =>
        !Known[coding.System!].TryGetValue(coding.Code ?? "", out string? display) ? $"the code {coding.Code} of {coding.System} is not in the table"
        : display != coding.Display ? $"the code {coding.Code} of {coding.System} is called \"{display}\", not \"{coding.Display}\""
        : null;

    private static string? Wrong(Quantity quantity) =>
        quantity.System == FhirSystems.Ucum && quantity.Code is { } code && Units.Contains(code) ? null : $"the unit \"{quantity.Code}\" of {quantity.System ?? "no system"} is not in the table";

    private static IEnumerable<string> Values(Observation observation)
    {
        foreach (string code in observation.Code.CodesOf(FhirSystems.Loinc))
        {
            if (VitalCodes.All.FirstOrDefault(row => row.Code == code) is { } row && observation.Value is Quantity value && !row.Units.ContainsKey(value.Code ?? ""))
            {
                yield return $"{row.Code} has the unit {value.Code}; it can have {string.Join(" or ", row.Units.Keys)}";
            }
        }

        foreach (Observation.ComponentComponent component in observation.Component)
        {
            foreach (string code in component.Code.CodesOf(FhirSystems.Loinc))
            {
                if (component.Value is Quantity value && VitalCodes.Others.TryGetValue(code, out var other) && other.Unit != value.Code)
                {
                    yield return $"{code} has the unit {value.Code}; it can have {other.Unit}";
                }
            }
        }
    }
}
