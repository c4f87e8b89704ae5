using System.Text.Json;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Tests.Spoken;

/// <summary>Makes expected meanings, from JSON or from values.</summary>
internal static class Means
{
    public static SemanticValue Json(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return From(document.RootElement);
    }

    public static SemanticValue Number(decimal value) => new SemanticNumber(value);

    public static SemanticValue Pair(int first, int second) => new SemanticList([Number(first), Number(second)]);

    public static SemanticRecord Record(params (string Name, SemanticValue Value)[] fields) =>
        fields.Aggregate(SemanticRecord.Empty, (sum, f) => sum.With(f.Name, f.Value));

    private static SemanticValue From(JsonElement e) => e.ValueKind switch
    {
        JsonValueKind.Number => new SemanticNumber(e.GetDecimal()),
        JsonValueKind.String => new SemanticText(e.GetString()!),
        JsonValueKind.True or JsonValueKind.False => new SemanticTruth(e.GetBoolean()),
        JsonValueKind.Null => SemanticNothing.Only,
        JsonValueKind.Array => new SemanticList([.. e.EnumerateArray().Select(From)]),
        JsonValueKind.Object => e.EnumerateObject().Aggregate(SemanticRecord.Empty, (sum, p) => sum.With(p.Name, From(p.Value))),
        _ => throw new ArgumentException($"no meaning: {e}", nameof(e)),
    };
}
