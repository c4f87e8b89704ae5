using System.Text.Json;

namespace HandsFree.Benchmarks.Calibrating;

/// <summary>What an engine found in one recording under one noise, and whether it was so: one line of an evidence file.</summary>
internal sealed record EvidenceRow
{
    /// <summary>"clean", or the noise and its dB: "babble:10".</summary>
    public required string Condition { get; init; }

    /// <summary>The folder's name.</summary>
    public required string Set { get; init; }

    public required string File { get; init; }

    public required string Speaker { get; init; }

    /// <summary>The grammar in force.</summary>
    public required string State { get; init; }

    public required string Words { get; init; }

    /// <summary>The words are a sentence of the grammar with a meaning.</summary>
    public required bool IsSentence { get; init; }

    public required string Transcript { get; init; }

    /// <summary>Of the utterance; empty where nothing was heard.</summary>
    public required IReadOnlyDictionary<string, double> Facts { get; init; }

    public required IReadOnlyList<EvidenceValue> Values { get; init; }

    /// <summary>Reads an evidence file.</summary>
    public static IReadOnlyList<EvidenceRow> Read(string path) =>
        [.. System.IO.File.ReadLines(path).Select(line => JsonSerializer.Deserialize<EvidenceRow>(line) ?? throw new InvalidDataException($"{path}: an empty line"))];
}

/// <summary>A value that was found.</summary>
/// <param name="Meaning">Its JSON.</param>
/// <param name="Words">The words.</param>
/// <param name="Facts">Its facts.</param>
/// <param name="Right">It is what was meant.</param>
/// <param name="IsGuess">It is a guess, which the dialogue never takes.</param>
/// <param name="IsYes">It is a yes.</param>
internal sealed record EvidenceValue(string Meaning, string Words, IReadOnlyDictionary<string, double> Facts, bool Right, bool IsGuess, bool IsYes);
