using System.Text.Json;
using System.Text.Json.Nodes;

namespace HandsFree.Benchmarks.Hearing;

/// <summary>One recording of a folder and what was said in it.</summary>
/// <param name="File">File name.</param>
/// <param name="Speaker">Speaker or voice.</param>
/// <param name="Words">The words.</param>
/// <param name="Meaning">The meaning, or null where the sentence means nothing to us.</param>
internal sealed record Transcript(string File, string Speaker, string Words, JsonObject? Meaning)
{
    /// <summary>What the older table calls a command and the newer one writes as something else.</summary>
    private static readonly Dictionary<string, string> Newer = new()
    {
        ["yes"] = """{"confirm":true}""",
        ["save"] = """{"confirm":true}""",
        ["no"] = """{"confirm":false}""",
        ["refused"] = """{"not taken":"refused"}""",
        ["count"] = """{"word":"count"}""",
    };

    /// <summary>Words that the recordings have and the design does not use.</summary>
    private static readonly string[] Unused = ["correct", "that is correct", "regular", "scratch that"];

    /// <summary>The state that listens for such a recording, by the first letter of its name.</summary>
    public string State => File[0] switch
    {
        'i' => "identity",
        'y' or 'n' => "confirmation",
        'k' => "count",
        'v' => "handover",
        _ => "readings",
    };

    /// <summary>Reads transcripts.tsv.</summary>
    public static IReadOnlyList<Transcript> Read(string folder)
    {
        string[][] lines = [.. System.IO.File.ReadLines(Path.Combine(folder, "transcripts.tsv")).Select(l => l.Split('\t'))];
        int meaning = Math.Max(Array.IndexOf(lines[0], "meaning"), Array.IndexOf(lines[0], "reading"));
        return [.. lines.Skip(1).Select(l => new Transcript(l[0], l[1], l[2], meaning < 0 ? null : Meant(JsonNode.Parse(l[meaning])!.AsObject())))];
    }

    /// <summary>Whether the sentence uses words that may go unheard.</summary>
    public bool IsUnused => Unused.Contains(Words);

    /// <summary>Whether the meaning is the one that was meant: numbers by value, anything else as written.</summary>
    public bool Means(string json) => Meaning is not null && Same(JsonNode.Parse(json), Meaning);

    private static JsonObject? Meant(JsonObject table)
    {
        if (table["kind"]?.GetValue<string>() is "none")
        {
            return null;
        }

        if (table["kind"]?.GetValue<string>() is not "command")
        {
            return table;
        }

        string said = table["value"]!.GetValue<string>();
        return Newer.TryGetValue(said, out string? newer) ? JsonNode.Parse(newer)!.AsObject() : new JsonObject { ["command"] = said };
    }

    private static bool Same(JsonNode? a, JsonNode? b) => (a, b) switch
    {
        (null, null) => true,
        (JsonObject x, JsonObject y) => x.Count == y.Count && x.All(p => y.ContainsKey(p.Key) && Same(p.Value, y[p.Key])),
        (JsonArray x, JsonArray y) => x.Count == y.Count && x.Zip(y).All(p => Same(p.First, p.Second)),
        (JsonValue x, JsonValue y) when x.GetValueKind() == JsonValueKind.Number && y.GetValueKind() == JsonValueKind.Number =>
            decimal.Parse(x.ToJsonString(), System.Globalization.CultureInfo.InvariantCulture) == decimal.Parse(y.ToJsonString(), System.Globalization.CultureInfo.InvariantCulture),
        _ => a?.ToJsonString() == b?.ToJsonString(),
    };
}
