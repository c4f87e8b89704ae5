using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace HandsFree.Benchmarks.Results;

/// <summary>One recording's result, as the JSON file keeps it.</summary>
internal sealed record HeardRow
{
    /// <summary>The folder's name (not its path).</summary>
    public required string Set { get; init; }

    /// <summary>The recording.</summary>
    public required string File { get; init; }

    /// <summary>Its speaker or voice.</summary>
    public required string Speaker { get; init; }

    /// <summary>The kind of utterance, as the table names it.</summary>
    public required string Kind { get; init; }

    /// <summary>The dialogue state whose grammar was in force, or the grammar's file.</summary>
    public required string State { get; init; }

    /// <summary>What was said.</summary>
    public required string Words { get; init; }

    /// <summary>What it means; null where it means nothing to us.</summary>
    public required JsonNode? Expected { get; init; }

    /// <summary>Whether the words are a sentence of the grammar in force.</summary>
    public required bool InGrammar { get; init; }

    /// <summary>How it was heard.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Anything but a yes that was taken as a yes.</summary>
    public required bool StrayYes { get; init; }

    /// <summary>The engine's outcome: Heard, Doubtful, Nothing, NoReading, Partial.</summary>
    public required string Outcome { get; init; }

    /// <summary>What the engine would have written without the grammar.</summary>
    public required string Transcript { get; init; }

    /// <summary>All values that the engine gave, likeliest first; also those of a refused hearing.</summary>
    public required IReadOnlyList<HeardCandidate> Candidates { get; init; }

    /// <summary>1 less the sum of the candidates' probabilities, not below 0: the probability of "none of these".</summary>
    public required double NoneProbability { get; init; }

    /// <summary>Difference of the log posteriors of the best and the next candidate (natural logarithm); null without both.</summary>
    public required double? Margin { get; init; }

    /// <summary>Length of the recording.</summary>
    public required double AudioSeconds { get; init; }

    /// <summary>Length of what the engine was given: the speech with the quiet that the endpointer leaves around it; 0 where no speech was found.</summary>
    public required double SpeechSeconds { get; init; }

    /// <summary>Time from the end of the speech to the hearing: all of the decoding, without the endpointer's quiet.</summary>
    public required double DecodeMilliseconds { get; init; }

    /// <summary>The best candidate, or null.</summary>
    [JsonIgnore]
    public HeardCandidate? Best => Candidates.Count > 0 ? Candidates[0] : null;

    /// <summary>Heard as another meaning, or let in.</summary>
    [JsonIgnore]
    public bool IsWrong => Verdict is Verdict.WrongValue or Verdict.WrongOther or Verdict.LetIn;

    /// <summary>The same for the same recording in another run.</summary>
    [JsonIgnore]
    public string Key => $"{Set}/{File}";
}
