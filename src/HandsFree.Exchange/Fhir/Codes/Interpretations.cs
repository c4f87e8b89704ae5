namespace HandsFree.Exchange.Fhir.Codes;

/// <summary>The interpretations that are written, of HL7's v3-ObservationInterpretation.</summary>
public static class Interpretations
{
    /// <summary>Each code with its name.</summary>
    public static IReadOnlyDictionary<string, string> Displays { get; } = new Dictionary<string, string>
    {
        ["N"] = "Normal",
        ["L"] = "Low",
        ["H"] = "High",
        ["LL"] = "Critical low",
        ["HH"] = "Critical high",
        ["A"] = "Abnormal",
    };
}
