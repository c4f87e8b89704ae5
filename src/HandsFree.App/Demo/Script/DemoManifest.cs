using System.Text.Json;
using System.Text.Json.Serialization;

namespace HandsFree.App.Demo.Script;

/// <summary>A made-up home, the recordings, what the aide means to do, and what the journal must hold afterwards.</summary>
internal sealed record DemoManifest
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        AllowOutOfOrderMetadataProperties = true,
    };

    /// <summary>For whoever opens the file.</summary>
    public required string About { get; init; }

    /// <summary>The id of the aide.</summary>
    public required string Aide { get; init; }

    /// <summary>The content of home.json.</summary>
    public required JsonElement Home { get; init; }

    /// <summary>The content of roster.json.</summary>
    public required JsonElement Roster { get; init; }

    /// <summary>The shift, resident by resident.</summary>
    public required IReadOnlyList<DemoVisit> Visits { get; init; }

    /// <summary>The clips of the questions at its end, in order.</summary>
    public required IReadOnlyList<string> Handover { get; init; }

    /// <summary>What the journal must hold, in any order, and nothing else.</summary>
    public required IReadOnlyList<ExpectedEntry> Expected { get; init; }

    /// <summary>All recordings.</summary>
    public required IReadOnlyList<DemoClip> Clips { get; init; }

    /// <summary>Reads the manifest of a folder.</summary>
    /// <returns>The manifest, or one line that says what is wrong and what to do.</returns>
    public static (DemoManifest? Manifest, string? Error) Read(string folder)
    {
        string path = Path.Combine(folder, "manifest.json");
        try
        {
            DemoManifest? manifest = JsonSerializer.Deserialize<DemoManifest>(File.ReadAllText(path), Options);
            return manifest is null ? (null, $"{path}: empty; restore it from the repository") : (manifest, manifest.WhyUnusable(path));
        }
        catch (JsonException wrong)
        {
            return (null, $"{path}: {wrong.Message.ReplaceLineEndings(" ")}; restore it from the repository");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (null, $"{path}: can't be read ({e.Message.ReplaceLineEndings(" ")}); set HANDSFREE_ROOT to the folder that has demo-audio-synthetic");
        }
    }

    private string? WhyUnusable(string path)
    {
        string? twice = Clips.GroupBy(c => c.Id).FirstOrDefault(g => g.Count() > 1)?.Key;
        HashSet<string> known = [.. Clips.Select(c => c.Id)];
        string? missing = Named().FirstOrDefault(id => !known.Contains(id));
        return twice is not null ? $"{path}: two clips have the id {twice}; rename one"
            : missing is not null ? $"{path}: the script names the clip {missing}, which is not in the list; add it"
            : null;
    }

    private IEnumerable<string> Named() =>
        Visits.SelectMany(v => v.Steps.SelectMany(Named).Concat([v.Room, v.Born])).Concat(Handover);

    private static IEnumerable<string> Named(DemoStep step) => step switch
    {
        DemoStep.Measure s => [s.Say],
        DemoStep.Count s => [s.Say, s.Counted, .. s.Breaths is { } breaths ? new[] { breaths } : []],
        DemoStep.Guess s => [s.Say],
        DemoStep.NotTaken s => [s.Say],
        DemoStep.Chat s => [s.Say],
        DemoStep.Word s => [s.Say],
        _ => [],
    };
}
