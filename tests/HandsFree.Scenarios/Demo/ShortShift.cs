using System.Text.Json.Nodes;
using HandsFree.TestKit;

namespace HandsFree.Scenarios.Demo;

/// <summary>The demo's folder copied, its shift cut to two residents, and changed by a test.</summary>
internal sealed class ShortShift : IDisposable
{
    private static readonly string[] Residents = ["102", "104"];
    private readonly DirectoryInfo root = Directory.CreateTempSubdirectory("handsfree-short-shift-");

    public ShortShift()
    {
        Directory.CreateDirectory(Folder);
        foreach (string file in Directory.GetFiles(Path.Combine(Shared.Repository, "demo-audio-synthetic")))
        {
            File.Copy(file, Path.Combine(Folder, Path.GetFileName(file)));
        }

        Change(manifest =>
        {
            Keep(manifest["visits"]!.AsArray());
            Keep(manifest["expected"]!.AsArray());
        });
    }

    /// <summary>What HANDSFREE_ROOT is to say.</summary>
    public string Root => root.FullName;

    /// <summary>The folder with manifest and recordings.</summary>
    public string Folder => Path.Combine(root.FullName, "demo-audio-synthetic");

    /// <summary>Changes the manifest.</summary>
    public ShortShift Change(Action<JsonNode> change)
    {
        string path = Path.Combine(Folder, "manifest.json");
        JsonNode manifest = JsonNode.Parse(File.ReadAllText(path))!;
        change(manifest);
        File.WriteAllText(path, manifest.ToJsonString());
        return this;
    }

    public void Dispose() => root.Delete(recursive: true);

    private static void Keep(JsonArray entries)
    {
        foreach (JsonNode? gone in entries.Where(e => !Residents.Contains((string?)e!["resident"])).ToList())
        {
            entries.Remove(gone);
        }
    }
}
