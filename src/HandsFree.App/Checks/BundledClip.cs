using System.Reflection;
using HandsFree.Audio;
using HandsFree.Audio.Wav;

namespace HandsFree.App.Checks;

/// <summary>The synthetic recording of one reading that the program carries, for its self-test.</summary>
internal static class BundledClip
{
    /// <summary>What is said in it.</summary>
    public const string Meaning = """{"kind": "pulse", "value": 85}""";

    private const string Name = "pulse-eighty-five.wav";

    /// <summary>Reads it.</summary>
    public static AudioClip Read()
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Name)
            ?? throw new InvalidOperationException($"the program carries no {Name}");
        WavResult read = WavReader.Read(stream, Name);
        return read.Clip ?? throw new InvalidOperationException(read.Error);
    }
}
