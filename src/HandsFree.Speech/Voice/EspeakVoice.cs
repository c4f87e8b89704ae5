using System.ComponentModel;
using System.Diagnostics;
using System.Text;
using HandsFree.Audio.Wav;

namespace HandsFree.Speech.Voice;

/// <summary>espeak-ng, run as a program (it is under the GPL and not to be linked). The words go in through its standard input, so
/// that no list of processes shows them.</summary>
/// <param name="language">espeak-ng's name of the language.</param>
public sealed class EspeakVoice(string language = "en-us") : IVoice
{
    private const string Program = "espeak-ng";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    /// <inheritdoc/>
    public string Name => Program;

    /// <summary>Null when the program is on the path, else one line that says why the voice can't speak.</summary>
    public static string? WhyNot()
    {
        string file = OperatingSystem.IsWindows() ? Program + ".exe" : Program;
        string[] folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        return folders.Any(folder => File.Exists(Path.Combine(folder, file)))
            ? null
            : "espeak-ng is not installed; install the package espeak-ng";
    }

    /// <inheritdoc/>
    public VoiceSound Speak(string text)
    {
        string words = SpokenText.ForSpeech(text);
        if (words.Length == 0)
        {
            return VoiceSound.Silent;
        }

        WavResult wav = WavReader.Read(new MemoryStream(StreamedWav.Complete(Run(words, language))), Program);
        return wav.IsRead ? new(wav.Clip.Samples) : throw new VoiceException($"{wav.Error}; the text was not spoken");
    }

    private static byte[] Run(string words, string language)
    {
        // 150 words a minute: understood better than the default of 175.
        var start = new ProcessStartInfo(Program, ["--stdin", "--stdout", "-b", "1", "-v", language, "-s", "150"])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardInputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            UseShellExecute = false,
        };
        try
        {
            using Process process = Process.Start(start) ?? throw new VoiceException("espeak-ng did not start");
            return Talk(process, words);
        }
        catch (Exception e) when (e is Win32Exception or IOException)
        {
            throw new VoiceException($"espeak-ng could not be run: {e.Message}; install the package espeak-ng", e);
        }
    }

    private static byte[] Talk(Process process, string words)
    {
        using var sound = new MemoryStream();
        Task reading = process.StandardOutput.BaseStream.CopyToAsync(sound);
        Task<string> complaint = process.StandardError.ReadToEndAsync();
        process.StandardInput.Write(words);
        process.StandardInput.Close();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            throw new VoiceException($"espeak-ng did not end within {Patience.TotalSeconds:0} seconds and was stopped");
        }

        Task.WaitAll(reading, complaint);
        return process.ExitCode == 0
            ? sound.ToArray()
            : throw new VoiceException($"espeak-ng ended with {process.ExitCode}: {complaint.Result.ReplaceLineEndings(" ").Trim()}");
    }
}
