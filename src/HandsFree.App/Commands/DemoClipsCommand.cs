using System.CommandLine;
using System.Text.RegularExpressions;
using HandsFree.App.Demo.Making;
using HandsFree.App.Demo.Script;

namespace HandsFree.App.Commands;

/// <summary>"handsfree demo-clips": makes the demo's recordings and writes their hashes into the manifest; for who changes the demo.</summary>
internal static partial class DemoClipsCommand
{
    public static Command Make(CommandHost host)
    {
        Argument<string> folder = new("FOLDER") { Description = "The folder with manifest.json" };
        Option<string?> audio = new("--audio") { Description = "The folder with the shared recordings", HelpName = "FOLDER" };
        Option<bool> again = new("--again") { Description = "Also make what is there" };
        Command command = new("demo-clips", "Makes the recordings of the demo") { Hidden = true };
        command.Arguments.Add(folder);
        command.Options.Add(audio);
        command.Options.Add(again);
        return host.Runs(command, (parsed, _) =>
            Make(host, parsed.GetValue(folder)!, parsed.GetValue(audio) ?? host.Surroundings.Variable("HANDSFREE_AUDIO"), parsed.GetValue(again)));
    }

    private static int Make(CommandHost host, string folder, string? audio, bool again)
    {
        (DemoManifest? manifest, string? error) = DemoManifest.Read(folder);
        if (manifest is null || error is not null)
        {
            return host.Refuse(error ?? "no manifest");
        }

        ClipMaker maker = new(folder, audio);
        foreach (DemoClip clip in manifest.Clips.Where(c => again || !File.Exists(Path.Combine(folder, c.File))))
        {
            if (maker.Make(clip, manifest.Clips) is { } why)
            {
                return host.Refuse(why);
            }

            host.Surroundings.Out.WriteLine($"{clip.File}: \"{clip.Text}\"");
        }

        // Only the hashes change; the rest of the file stays as it was written.
        string path = Path.Combine(folder, "manifest.json");
        Dictionary<string, DemoClip> byFile = manifest.Clips.ToDictionary(c => c.File);
        File.WriteAllText(path, ClipLine().Replace(File.ReadAllText(path), line => line.Groups[1].Value + maker.Hash(byFile[line.Groups[2].Value]) + line.Groups[3].Value));
        return ExitCodes.Done;
    }

    [GeneratedRegex("(\"file\": \"([^\"]+)\".*\"sha256\": \")[0-9a-f]*(\")")]
    private static partial Regex ClipLine();
}
