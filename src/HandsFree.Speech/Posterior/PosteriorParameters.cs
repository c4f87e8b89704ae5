using System.Text.Json;
using System.Text.Json.Nodes;

namespace HandsFree.Speech.Posterior;

/// <summary>The measured numbers that make an engine's evidence probabilities; a data file beside the engine, made by the benchmark
/// "calibrate".</summary>
/// <param name="Version">Of the file's form.</param>
/// <param name="Run">How it was made: date, command, recordings, noise, seed, and what it gave on speakers that it had not seen.</param>
/// <param name="LeastProbability">A value below this is not sure, and where all values together are below it, it was none of these; 0 to 1.</param>
/// <param name="Value">Weights of the facts of a value.</param>
/// <param name="None">Weights of the facts of the utterance, for "none of these".</param>
internal sealed record PosteriorParameters(
    int Version, JsonObject Run, double LeastProbability, IReadOnlyDictionary<string, double> Value, IReadOnlyDictionary<string, double> None)
{
    /// <summary>The form that this program reads.</summary>
    public const int CurrentVersion = 1;

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web) { WriteIndented = true };

    /// <summary>Reads a data file that the assembly carries.</summary>
    /// <param name="name">"vosk-posterior.json".</param>
    public static PosteriorParameters Carried(string name)
    {
        using Stream stream = typeof(PosteriorParameters).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not in the assembly");
        PosteriorParameters read = JsonSerializer.Deserialize<PosteriorParameters>(stream, Json) ?? throw new InvalidDataException($"{name} is empty");
        return read.Version == CurrentVersion ? read
            : throw new InvalidDataException($"{name} has the form {read.Version}, not {CurrentVersion}; make it again with the benchmark calibrate");
    }

    /// <summary>The file's text.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Json) + "\n";
}
