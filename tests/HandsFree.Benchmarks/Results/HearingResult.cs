using System.Text.Encodings.Web;
using System.Text.Json;

namespace HandsFree.Benchmarks.Results;

/// <summary>One run of "hearing" as its JSON file: what was run, where, and one row a recording.</summary>
internal sealed record HearingResult
{
    /// <summary>The form of this file; raised when a field changes its meaning.</summary>
    public const int CurrentVersion = 1;

    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public required int Version { get; init; }

    public required string Engine { get; init; }

    /// <summary>Start of the run, UTC.</summary>
    public required DateTimeOffset Date { get; init; }

    /// <summary>The folders' names.</summary>
    public required IReadOnlyList<string> Sets { get; init; }

    /// <summary>Only each Nth recording.</summary>
    public required int Every { get; init; }

    /// <summary>Processor threads of one hearing.</summary>
    public required int Threads { get; init; }

    /// <summary>A state or a grammar's file for all recordings; null where each recording had that of its meaning.</summary>
    public required string? ListeningFor { get; init; }

    /// <summary>"pink", "babble", a file's name, or null.</summary>
    public required string? Noise { get; init; }

    /// <summary>Speech above noise in dB; null without noise.</summary>
    public required double? SnrDb { get; init; }

    /// <summary>Seed of noise and room.</summary>
    public required int Seed { get; init; }

    /// <summary>What the microphone did, as --microphone names it; null where nothing.</summary>
    public required string? Microphone { get; init; }

    public required HostFacts Host { get; init; }

    /// <summary>Time to load the engine.</summary>
    public required double LoadSeconds { get; init; }

    /// <summary>Peak resident size of the process.</summary>
    public required double PeakMemoryMebibytes { get; init; }

    public required IReadOnlyList<HeardRow> Rows { get; init; }

    /// <summary>Finds out before a long run whether its result can be written; leaves a file that is there as it is.</summary>
    /// <param name="path">Null where no file is wanted.</param>
    /// <exception cref="IOException">No such folder, or it can't be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It must not be written.</exception>
    public static void CheckPlace(string? path)
    {
        if (path is not null)
        {
            using FileStream trial = new(path, FileMode.OpenOrCreate, FileAccess.Write);
        }
    }

    /// <summary>Writes the file.</summary>
    public void Save(string path) => File.WriteAllText(path, JsonSerializer.Serialize(this, Options) + "\n");

    /// <summary>Reads such a file.</summary>
    /// <exception cref="InvalidDataException">Missing or no result of "hearing": one line that says which and why.</exception>
    public static HearingResult Load(string path)
    {
        if (!File.Exists(path))
        {
            throw new InvalidDataException($"{path}: there is no such file");
        }

        try
        {
            HearingResult? result = JsonSerializer.Deserialize<HearingResult>(File.ReadAllText(path), Options);
            return result is { Version: CurrentVersion } ? result
                : throw new InvalidDataException($"{path}: made by another version of this program (form {result?.Version}, not {CurrentVersion}); run hearing again");
        }
        catch (JsonException e)
        {
            throw new InvalidDataException($"{path}: no result of \"hearing --json\" ({e.Message})", e);
        }
    }
}
