using System.Text;
using HandsFree.App.Demo.Script;
using Shouldly;

namespace HandsFree.Scenarios.Demo;

/// <summary>Looks through files, byte by byte, for what must not be readable in them.</summary>
internal static class SealedFiles
{
    /// <summary>No name, no date of birth, no reading, in UTF-8 or UTF-16. The home's own files (roster, settings, the demo's PIN) are left
    /// out: they are the home's, not the journal's.</summary>
    public static void HoldNothingOf(DemoManifest manifest, params string[] places)
    {
        string[] words =
        [
            .. manifest.Roster.GetProperty("residents").EnumerateArray()
                .SelectMany(r => new[] { r.GetProperty("name").GetString()!, r.GetProperty("born").GetString()! }),
            "pulse", "perMinute", "blood pressure", "temperature", "refused", "reading recorded", manifest.Aide,
        ];
        string[] files = [.. places.SelectMany(place => Directory.Exists(place) ? Directory.GetFiles(place, "*", SearchOption.AllDirectories) : [place])
            .Where(file => Path.GetExtension(file) is not (".json" or ".pin"))];
        files.Length.ShouldBeGreaterThan(3);
        foreach (string file in files)
        {
            byte[] content = File.ReadAllBytes(file);
            words.Where(word => Holds(content, Encoding.UTF8.GetBytes(word)) || Holds(content, Encoding.Unicode.GetBytes(word))).ShouldBeEmpty(file);
        }
    }

    private static bool Holds(byte[] content, byte[] word) => content.AsSpan().IndexOf(word) >= 0;
}
