using System.Text.Json;
using System.Text.Json.Nodes;
using HandsFree.Benchmarks.Dictations.Saying;

namespace HandsFree.Benchmarks.Dictations.Sound;

/// <summary>Folders of recordings with a transcripts.tsv (file, speaker, words, reading or meaning).</summary>
internal sealed class Clips
{
    private const int MostOfOthers = 8;

    private readonly Dictionary<(string Speaker, string Words), string> files = [];
    private readonly ILookup<(string Speaker, string Sign), SpokenReading> readings;
    private readonly ILookup<string, SpokenReading> bySign;

    private Clips(IReadOnlyList<(string File, string Speaker, string Words, JsonObject Meaning)> lines)
    {
        foreach (var line in lines)
        {
            files.TryAdd((line.Speaker, line.Words), line.File);
        }

        Speakers = [.. lines.Select(l => l.Speaker).Distinct().Order(StringComparer.Ordinal)];
        var all = lines.Select(l => (l.Speaker, Reading: ReadingOf(l.Words, l.Meaning))).Where(r => r.Reading is not null).ToList();
        readings = all.ToLookup(r => (r.Speaker, r.Reading!.Value.Sign), r => r.Reading!);
        bySign = all.ToLookup(r => r.Reading!.Value.Sign, r => r.Reading!);
    }

    /// <summary>All speakers.</summary>
    public IReadOnlyList<string> Speakers { get; }

    /// <summary>Reads the folders.</summary>
    public static Clips Read(IEnumerable<string> folders) => new([.. folders.SelectMany(ReadFolder)]);

    /// <summary>The file in which a speaker says these words, or null.</summary>
    public string? Saying(string speaker, string words) => files.GetValueOrDefault((speaker, words));

    /// <summary>What this speaker was recorded reading of a sign; where he has none, some of what others read; none where nobody did.</summary>
    public IReadOnlyList<SpokenReading> Readings(string sign, string speaker) =>
        readings[(speaker, sign)].Any() ? [.. readings[(speaker, sign)]]
        : [.. bySign[sign].OrderBy(r => Steady.Number(speaker, r.Sentence)).Take(MostOfOthers)];

    private static IEnumerable<(string, string, string, JsonObject)> ReadFolder(string folder)
    {
        string[][] lines = [.. File.ReadLines(Path.Combine(folder, "transcripts.tsv")).Select(l => l.Split('\t'))];
        int meaning = Math.Max(Array.IndexOf(lines[0], "meaning"), Array.IndexOf(lines[0], "reading"));
        return meaning < 0
            ? throw new InvalidDataException($"{folder}: transcripts.tsv has neither a column reading nor a column meaning")
            : lines.Skip(1).Select(l => (Path.Combine(folder, l[0]), l[1], l[2], JsonNode.Parse(l[meaning])!.AsObject()));
    }

    private static SpokenReading? ReadingOf(string words, JsonObject meaning)
    {
        string sign = meaning["kind"] is JsonValue kind && kind.GetValueKind() == JsonValueKind.String ? kind.GetValue<string>() : "";
        if (!Measured.Signs.Contains(sign) || meaning["value"] is not { } value || meaning.ContainsKey("not taken") || meaning.ContainsKey("seconds"))
        {
            return null;
        }

        decimal[] numbers = value is JsonArray pair ? [.. pair.Select(n => n!.GetValue<decimal>())] : [value.GetValue<decimal>()];
        string unit = sign switch
        {
            "temperature" => meaning["unit"]?.GetValue<string>() is "C" || (meaning["unit"] is null && numbers[0] < 50) ? "Celsius" : "Fahrenheit",
            "weight" => meaning["unit"]?.GetValue<string>() is "kg" ? "kilograms" : "pounds",
            _ => "",
        };
        string[] ways = meaning["qualifiers"] is JsonArray qualifiers ? [.. qualifiers.Select(q => Way(q!.GetValue<string>()))] : [];
        return new SpokenReading(new Measured(sign, numbers[0], numbers.Length > 1 ? numbers[1] : null, unit, string.Join(", ", ways)), words);
    }

    // A read-back's words for what the grammars' tags say.
    private static string Way(string qualifier) => qualifier switch
    {
        "by mouth" => "mouth",
        "irregular" => "uneven",
        "on 1 liters" or "on one liters" => "on one litre",
        _ => qualifier.Replace("liters", "litres", StringComparison.Ordinal),
    };
}
