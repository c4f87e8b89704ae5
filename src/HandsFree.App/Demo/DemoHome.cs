using System.Text.Json;
using HandsFree.App.Demo.Script;
using HandsFree.App.Homes;

namespace HandsFree.App.Demo;

/// <summary>The made-up home as files, so that all other commands can be tried on it.</summary>
internal static class DemoHome
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    /// <summary>Writes home.json and roster.json into a folder that has neither these nor a journal.</summary>
    /// <returns>Null, or one line that says what is in the way.</returns>
    public static string? Write(HomeFolder folder, DemoManifest manifest)
    {
        string? taken = new[] { folder.JournalFile, folder.RosterFile, folder.SettingsFile, folder.RulesFile }.FirstOrDefault(Path.Exists);
        if (taken is not null)
        {
            return $"{taken} is there already, and the demo changes no home; name a new folder with --home";
        }

        try
        {
            HomeFolder.Make(folder.Path);
            File.WriteAllText(folder.SettingsFile, JsonSerializer.Serialize(manifest.Home, Indented));
            File.WriteAllText(folder.RosterFile, JsonSerializer.Serialize(manifest.Roster, Indented));
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"{folder.Path}: the demo's home can't be made ({e.Message.ReplaceLineEndings(" ")}); name another folder with --home";
        }
    }
}
