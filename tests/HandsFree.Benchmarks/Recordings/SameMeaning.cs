using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace HandsFree.Benchmarks.Recordings;

/// <summary>Compares meanings: numbers by value, anything else as written; the order of fields does not matter.</summary>
internal static class SameMeaning
{
    /// <summary>Whether both mean the same.</summary>
    public static bool Of(JsonNode? a, JsonNode? b) => (a, b) switch
    {
        (null, null) => true,
        (JsonObject x, JsonObject y) => x.Count == y.Count && x.All(p => y.ContainsKey(p.Key) && Of(p.Value, y[p.Key])),
        (JsonArray x, JsonArray y) => x.Count == y.Count && x.Zip(y).All(p => Of(p.First, p.Second)),
        (JsonValue x, JsonValue y) when x.GetValueKind() == JsonValueKind.Number && y.GetValueKind() == JsonValueKind.Number => Number(x) == Number(y),
        _ => a?.ToJsonString() == b?.ToJsonString(),
    };

    private static decimal Number(JsonValue value) => decimal.Parse(value.ToJsonString(), NumberStyles.Float, CultureInfo.InvariantCulture);
}
