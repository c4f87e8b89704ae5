using System.Diagnostics;
using System.Security.Cryptography;
using HandsFree.App.Demo.Script;
using HandsFree.Audio.Noise;
using HandsFree.Audio.Wav;

namespace HandsFree.App.Demo.Making;

/// <summary>Makes the recordings of a manifest: copies shared ones, has the others spoken by flite or espeak-ng, mixes noise in by
/// its seed. The same manifest always gives the same files where the voices are the same.</summary>
/// <param name="folder">The folder of the manifest.</param>
/// <param name="shared">The folder with the shared recordings, or null.</param>
internal sealed class ClipMaker(string folder, string? shared)
{
    private static readonly string[] SharedFolders = ["dictation-synthetic", "dialogue-synthetic"];

    /// <summary>Makes one file.</summary>
    /// <param name="clip">What to make.</param>
    /// <param name="all">All of the manifest, for babble.</param>
    /// <returns>Null, or one line that says why it can't be made.</returns>
    public string? Make(DemoClip clip, IReadOnlyList<DemoClip> all)
    {
        string path = Path.Combine(folder, clip.File);
        if (clip is { Source: { } source, Noise: null })
        {
            return Find(source) is { } original ? Copied(original, path) : Missing(source);
        }

        WavResult plain = clip.Source is { } shared ? Read(shared) : Speak(clip);
        if (!plain.IsRead)
        {
            return plain.Error;
        }

        float[] samples = plain.Clip.Samples;
        WavWriter.Write(path, clip.Noise is { } noise ? Mixer.AddNoise(samples, Noise(noise, samples.Length, all), noise.SnrDecibels) : samples);
        return null;
    }

    /// <summary>The SHA-256 of a file that is there, lower-case hexadecimal.</summary>
    public string Hash(DemoClip clip) => Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(Path.Combine(folder, clip.File))));

    private float[] Noise(DemoNoise noise, int length, IReadOnlyList<DemoClip> all) => noise.Kind switch
    {
        "pink" => PinkNoise.Make(length, noise.Seed, -30),
        "babble" => Babble.Make(length, noise.Seed, [.. all.Where(c => c is { Source: not null, Noise: null }).Select(c => Read(c.Source!).Clip?.Samples).OfType<float[]>()]),
        _ => throw new InvalidDataException($"manifest.json: no noise is called \"{noise.Kind}\"; use pink or babble"),
    };

    private static WavResult Speak(DemoClip clip)
    {
        string file = Path.GetTempFileName();
        try
        {
            string[] voice = clip.Voice.Split(' ');
            ProcessStartInfo start = voice[0] == "flite"
                ? new ProcessStartInfo("flite", ["-voice", voice[1], "-t", clip.Text, "-o", file])
                : new ProcessStartInfo("espeak-ng", ["-v", voice[1], "-s", "150", "-w", file, clip.Text]);
            using Process speaking = Process.Start(start) ?? throw new InvalidOperationException($"{voice[0]} did not start");
            speaking.WaitForExit();
            return WavReader.Read(file);
        }
        finally
        {
            File.Delete(file);
        }
    }

    private WavResult Read(string source) => WavReader.Read(Find(source) ?? Path.Combine(shared ?? ".", source));

    private string? Find(string source) =>
        SharedFolders.Select(f => Path.Combine(shared ?? "", f, source)).FirstOrDefault(File.Exists);

    private static string? Copied(string from, string to)
    {
        File.Copy(from, to, overwrite: true);
        File.SetAttributes(to, FileAttributes.Normal);
        return null;
    }

    private static string Missing(string source) => $"{source}: no such shared recording; name their folder with --audio";
}
