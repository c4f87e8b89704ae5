using System.Security.Cryptography;
using HandsFree.Audio.Wav;
using HandsFree.Language.Sentences;

namespace HandsFree.App.Demo.Script;

/// <summary>The recordings by name and by what is said in them.</summary>
internal sealed class ClipShelf
{
    private readonly Dictionary<string, DemoClip> byId;
    private readonly ILookup<string, DemoClip> byText;
    private readonly Dictionary<string, float[]> samples;

    private ClipShelf(IReadOnlyList<DemoClip> clips, Dictionary<string, float[]> samples, IReadOnlyList<string> changed)
    {
        byId = clips.ToDictionary(c => c.Id);
        byText = clips.Where(c => c.Noise is null).ToLookup(c => Plain(c.Text));
        this.samples = samples;
        Changed = changed;
    }

    /// <summary>A line for each file that is not the one of the manifest.</summary>
    public IReadOnlyList<string> Changed { get; }

    /// <summary>Reads all recordings.</summary>
    /// <returns>The shelf, or one line that says which file can't be read and why.</returns>
    public static (ClipShelf? Shelf, string? Error) Read(string folder, IReadOnlyList<DemoClip> clips)
    {
        Dictionary<string, float[]> samples = [];
        List<string> changed = [];
        foreach (DemoClip clip in clips)
        {
            string path = Path.Combine(folder, clip.File);
            WavResult read = WavReader.Read(path);
            if (!read.IsRead)
            {
                return (null, $"{read.Error}; restore it from the repository, or run make-clips.sh beside it");
            }

            string hash = Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(path)));
            if (hash != clip.Sha256)
            {
                changed.Add($"{clip.File} is not the recording of the manifest (SHA-256 {hash[..12]}…, expected {clip.Sha256[..Math.Min(12, clip.Sha256.Length)]}…)");
            }

            samples[clip.Id] = read.Clip.Samples;
        }

        return (new ClipShelf(clips, samples, changed), null);
    }

    /// <summary>The clip of that name.</summary>
    public DemoClip Named(string id) => byId[id];

    /// <summary>A clip in which this is said, another one each time it has to be said again; null where there is none.</summary>
    /// <param name="text">Words in any case.</param>
    /// <param name="voice">The voice that comes first.</param>
    /// <param name="time">0 for the first time.</param>
    public DemoClip? Saying(string text, string voice, int time)
    {
        DemoClip[] found = [.. byText[Plain(text)].OrderBy(c => c.Voice != voice)];
        return found.Length == 0 ? null : found[time % found.Length];
    }

    /// <summary>Its sound.</summary>
    public float[] Samples(DemoClip clip) => samples[clip.Id];

    private static string Plain(string text) => string.Join(' ', Matcher.WordsOf(text));
}
