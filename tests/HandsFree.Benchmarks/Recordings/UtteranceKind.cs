using System.Text.Json.Nodes;

namespace HandsFree.Benchmarks.Recordings;

/// <summary>Sorts meanings into kinds of utterance.</summary>
internal static class UtteranceKind
{
    /// <summary>A sentence that means nothing to us.</summary>
    public const string NoReading = "no reading";

    /// <summary>Fields that hold what would be saved or looked up: a wrong one of these is a wrong value.</summary>
    private static readonly string[] ValueFields = ["kind", "value", "count", "corrected", "room", "born", "band", "number"];

    /// <summary>The kind of reading ("pulse"), "yes", "no", or the name of the record's first field ("command", "count", "hedge").</summary>
    public static string Of(JsonObject? meaning) => Field(meaning) switch
    {
        null => NoReading,
        "kind" => meaning!["kind"]!.ToString(),
        "confirm" => meaning!["confirm"]!.GetValue<bool>() ? "yes" : "no",
        "room" or "born" or "name" or "band" => "identity",
        string field => field,
    };

    /// <summary>Whether a meaning carries a value, and not only a command, an answer or a refusal.</summary>
    public static bool IsValue(JsonNode? meaning) => meaning is JsonObject record && Field(record) is not "not taken" && ValueFields.Any(record.ContainsKey);

    /// <summary>Whether it is a guess, which the dialogue never takes.</summary>
    public static bool IsGuess(JsonNode? meaning) => meaning is JsonObject record && record.ContainsKey("hedge");

    /// <summary>Whether it is a yes.</summary>
    public static bool IsYes(JsonNode? meaning) =>
        meaning is JsonObject record && record["confirm"] is JsonValue value && value.TryGetValue(out bool yes) && yes;

    /// <summary>The name of the first field, or null without a meaning.</summary>
    internal static string? Field(JsonObject? meaning) => meaning?.FirstOrDefault().Key;
}
