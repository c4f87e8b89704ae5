using System.Text.Json.Nodes;

namespace HandsFree.Benchmarks.Recordings;

/// <summary>One recording of a folder and what was said in it.</summary>
/// <param name="Folder">Path of its folder.</param>
/// <param name="File">File name.</param>
/// <param name="Speaker">Speaker or voice.</param>
/// <param name="Words">The words.</param>
/// <param name="HasMeaning">The table has a column for the meaning; without it the grammar says what the words mean.</param>
/// <param name="Meaning">The meaning, or null where the sentence means nothing to us or the table has no column for it.</param>
internal sealed record Transcript(string Folder, string File, string Speaker, string Words, bool HasMeaning, JsonObject? Meaning)
{
    /// <summary>Path of the recording.</summary>
    public string FilePath => Path.Combine(Folder, File);

    /// <summary>The same for this recording wherever its folder lies: folder's name and file.</summary>
    public string Key => $"{SetName}/{File}";

    /// <summary>The folder's own name.</summary>
    public string SetName => Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(Folder)));

    /// <summary>The dialogue state in which it would be said, by its meaning.</summary>
    public string State => UtteranceKind.Field(Meaning) switch
    {
        "room" or "born" or "name" or "band" => "identity",
        "confirm" or "corrected" => "confirmation",
        "count" or "word" => "count",
        "query" => "handover",
        _ => "readings",
    };

    /// <summary>What the tables call its kind.</summary>
    public string Kind => HasMeaning ? UtteranceKind.Of(Meaning) : "words";
}
