using HandsFree.App.Checks;
using HandsFree.Audio;
using HandsFree.Audio.Wav;

namespace HandsFree.Scenarios.CommandLine;

/// <summary>Recordings laid into a temporary folder.</summary>
internal static class Recordings
{
    /// <summary>"Pulse eighty five", in a synthetic voice.</summary>
    public static string Pulse(TemporaryHome folder, string name) => Write(folder, name, BundledClip.Read().Samples);

    /// <summary>Two seconds of quiet.</summary>
    public static string Quiet(TemporaryHome folder, string name) => Write(folder, name, new float[2 * AudioClip.SampleRate]);

    private static string Write(TemporaryHome folder, string name, float[] samples)
    {
        string path = folder.At(name);
        WavWriter.Write(path, samples);
        return path;
    }
}
