using System.Text.Json;
using System.Text.Json.Nodes;

namespace HandsFree.Benchmarks.Recordings;

/// <summary>Reads the transcripts.tsv of a folder of recordings: columns file, speaker, words and, if the sentences have meanings, reading or
/// meaning (JSON); in any order, others are left alone.</summary>
internal static class TranscriptTable
{
    /// <summary>The table's name.</summary>
    public const string Name = "transcripts.tsv";

    /// <summary>What the table of readings calls a command and the table of the dialogue writes as something else.</summary>
    private static readonly Dictionary<string, string> Commands = new()
    {
        ["yes"] = """{"confirm":true}""",
        ["save"] = """{"confirm":true}""",
        ["no"] = """{"confirm":false}""",
        ["refused"] = """{"not taken":"refused"}""",
        ["count"] = """{"word":"count"}""",
    };

    /// <summary>All recordings of a folder, in the table's order.</summary>
    /// <exception cref="InvalidDataException">No such folder or table, a column or a recording is missing, a line is broken: one line that
    /// says what and where.</exception>
    public static IReadOnlyList<Transcript> Read(string folder)
    {
        string path = Path.Combine(folder, Name);
        if (!File.Exists(path))
        {
            throw new InvalidDataException(Directory.Exists(folder)
                ? $"{folder}: there is no {Name}; it needs one line a recording, with the columns file, speaker, words and, if there are meanings, meaning"
                : $"{folder}: there is no such folder");
        }

        string[] lines = File.ReadAllLines(path);
        string[] header = lines.Length == 0 ? [] : [.. lines[0].Split('\t').Select(c => c.Trim())];
        int file = Column(path, header, "file");
        int speaker = Column(path, header, "speaker");
        int words = Column(path, header, "words");
        int meaning = Math.Max(Array.IndexOf(header, "meaning"), Array.IndexOf(header, "reading"));
        List<Transcript> all = [];
        for (int i = 1; i < lines.Length; i++)
        {
            if (lines[i].Length == 0)
            {
                continue;
            }

            string[] fields = lines[i].Split('\t');
            if (fields.Length != header.Length)
            {
                throw new InvalidDataException($"{path}: line {i + 1} has {fields.Length} columns instead of {header.Length}");
            }

            all.Add(new(folder, fields[file], fields[speaker], fields[words], meaning >= 0, meaning < 0 ? null : Meaning(path, i + 1, fields[meaning])));
        }

        return Checked(path, all);
    }

    private static List<Transcript> Checked(string path, List<Transcript> all)
    {
        if (all.Count == 0)
        {
            throw new InvalidDataException($"{path}: it names no recording");
        }

        if (all.GroupBy(t => t.File).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new InvalidDataException($"{path}: {twice.Key} is there twice");
        }

        string[] missing = [.. all.Where(t => !File.Exists(t.FilePath)).Select(t => t.File)];
        return missing.Length == 0 ? all
            : throw new InvalidDataException($"{path}: {missing.Length} of its recordings are not there, the first is {missing[0]}");
    }

    private static int Column(string path, string[] header, string name) => Array.IndexOf(header, name) is >= 0 and int at ? at
        : throw new InvalidDataException($"{path}: there is no column \"{name}\" in its first line; it needs file, speaker, words and, if there are meanings, meaning");

    private static JsonObject? Meaning(string path, int line, string text)
    {
        JsonObject table;
        try
        {
            table = JsonNode.Parse(text) as JsonObject ?? throw new JsonException("no object");
        }
        catch (JsonException e)
        {
            throw new InvalidDataException($"{path}: line {line}: \"{text}\" is no JSON object ({e.Message})", e);
        }

        return table["kind"]?.ToString() switch
        {
            _ when table.Count == 0 => null,
            "none" => null,
            "command" => Command(path, line, table),
            _ => table,
        };
    }

    private static JsonObject Command(string path, int line, JsonObject table)
    {
        string said = table["value"]?.ToString() ?? throw new InvalidDataException($"{path}: line {line}: a command without a value");
        return Commands.TryGetValue(said, out string? newer) ? JsonNode.Parse(newer)!.AsObject() : new JsonObject { ["command"] = said };
    }
}
