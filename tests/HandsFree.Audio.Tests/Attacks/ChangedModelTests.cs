using HandsFree.Audio.Endpointing;
using HandsFree.Audio.Runtime;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Attacks;

/// <summary>The attack: another model, or another library, laid in the place of the one that was checked.</summary>
public sealed class ChangedModelTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-model-");

    [Fact]
    public void A_speech_detector_that_is_not_the_known_one_is_not_loaded()
    {
        string model = Path.Combine(folder.FullName, "silero_vad_v6.onnx");
        File.WriteAllBytes(model, new byte[2_327_524]);

        DetectorChoice choice = DetectorChoice.Best(model);

        using (choice.Detector)
        {
            choice.Detector.ShouldBeOfType<EnergySpeechDetector>();
            choice.WhyNotBetter.ShouldNotBeNull().ShouldContain("is not the file that was checked (SHA-256 ");
        }
    }

    [Fact] // Source: FIPS 180-2, appendix B.1: SHA-256 of "abc" (from memory).
    public void A_file_is_known_by_its_SHA_256()
    {
        string file = Path.Combine(folder.FullName, "abc");
        File.WriteAllText(file, "abc");

        KnownFile.WhyNot(file, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad").ShouldBeNull();
        KnownFile.WhyNot(file, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ae").ShouldNotBeNull();
        KnownFile.WhyNot(Path.Combine(folder.FullName, "none"), "").ShouldNotBeNull().ShouldContain("can't be read");
    }

    public void Dispose() => folder.Delete(recursive: true);
}
