using System.Diagnostics;
using System.Security.Cryptography;
using System.Text;
using HandsFree.Audio.Wav;

namespace HandsFree.Benchmarks.Dictations.Sound;

/// <summary>Voices that flite and espeak-ng make while the benchmark runs; what was made once is kept in a folder.</summary>
/// <param name="names">"flite:slt", "espeak:en-us+f3", ….</param>
/// <param name="folder">Where made sound is kept.</param>
internal sealed class MadeVoices(IReadOnlyList<string> names, string folder) : IVoiceBox
{
    /// <summary>Where none is named.</summary>
    public static IReadOnlyList<string> Usual { get; } =
        ["flite:slt", "flite:rms", "flite:awb", "flite:kal16", "espeak:en-us", "espeak:en-us+f3", "espeak:en-gb+m3"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Names => names;

    /// <inheritdoc/>
    public float[] Speak(string voice, string text)
    {
        string name = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{voice} {text}")))[..24];
        string file = Path.Combine(folder, name + ".wav");
        if (!File.Exists(file))
        {
            // Several processes may make the same: the file appears in one piece.
            Directory.CreateDirectory(folder);
            string making = Path.Combine(folder, $"{name}.{Environment.ProcessId}.making.wav");
            Make(voice, text, making);
            File.Move(making, file, overwrite: true);
        }

        return WavReader.Read(file) is { Clip: { } clip } ? clip.Samples : throw new IOException($"{file} can't be read; delete it");
    }

    private static void Make(string voice, string text, string file)
    {
        string[] parts = voice.Split(':', 2);
        ProcessStartInfo start = parts switch
        {
            ["flite", var named] => new ProcessStartInfo("flite", ["-voice", named, "-t", text, "-o", file]),
            ["espeak", var named] => new ProcessStartInfo("espeak-ng", ["-v", named, "-s", "150", "-w", file, text]),
            _ => throw new ArgumentException($"no voice is called {voice}; use flite:NAME or espeak:NAME"),
        };
        using Process speaking = Process.Start(start) ?? throw new IOException($"{parts[0]} did not start; install it");
        speaking.WaitForExit();
        if (speaking.ExitCode != 0 || !File.Exists(file))
        {
            throw new IOException($"{voice} could not say \"{text}\" (exit code {speaking.ExitCode})");
        }
    }
}
