using System.Text.Json.Nodes;
using HandsFree.TestKit;

namespace HandsFree.Scenarios.Demo;

/// <summary>The demo's folder copied, its shift cut to some residents (two where none are named), and changed by a test.</summary>
internal sealed class ShortShift : IDisposable
{
    private readonly string[] residents;
    private readonly DirectoryInfo root = Directory.CreateTempSubdirectory("handsfree-short-shift-");

    public ShortShift(params string[] residents)
    {
        this.residents = residents.Length > 0 ? residents : ["102", "104"];
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

    private void Keep(JsonArray entries)
    {
        foreach (JsonNode? gone in entries.Where(e => !residents.Contains((string?)e!["resident"])).ToList())
        {
            entries.Remove(gone);
        }
    }
}
