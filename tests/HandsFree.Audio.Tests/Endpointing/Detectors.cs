using HandsFree.Audio.Endpointing;
using HandsFree.TestKit;
using Xunit;

namespace HandsFree.Audio.Tests.Endpointing;

/// <summary>The real detectors by name; a test that needs the Silero model is skipped where set-up has not fetched it.</summary>
internal static class Detectors
{
    public static string SileroModel
    {
        get
        {
            string path = Path.Combine(Shared.Repository, ".handsfree", "vad", "silero_vad_v6.onnx");
            Assert.SkipUnless(File.Exists(path), "silero_vad_v6.onnx is not in .handsfree/vad of the repository");
            return path;
        }
    }

    public static ISpeechDetector Open(string name) =>
        name == "silero" ? new SileroSpeechDetector(SileroModel) : new EnergySpeechDetector();
}
