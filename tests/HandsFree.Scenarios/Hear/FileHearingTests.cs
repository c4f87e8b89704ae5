using HandsFree.App.Checks;
using HandsFree.App.Hearing;
using HandsFree.Audio;
using HandsFree.Audio.Endpointing;
using HandsFree.Audio.Wav;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Hear;

public sealed class FileHearingTests
{
    [Fact]
    public void Without_the_detector_s_model_the_energy_finds_the_speech_and_that_is_said()
    {
        using FileHearing hearing = new("no such file.onnx");

        hearing.DetectorName.ShouldBe("energy");
        hearing.WhyNotBetter.ShouldNotBeNull().ShouldContain("no such file.onnx");
        hearing.Speech(BundledClip.Read()).ShouldNotBeNull().Duration.TotalSeconds.ShouldBeInRange(0.5, 2.2);
        hearing.Speech(new AudioClip(new float[AudioClip.SampleRate])).ShouldBeNull();
        hearing.Speech(new AudioClip([])).ShouldBeNull();
    }

    [Fact]
    public void A_whisper_that_Silero_misses_is_found_by_its_energy()
    {
        string silero = SileroHere();
        string[] folders = [Shared.Audio("dictation-synthetic"), Shared.Audio("dialogue-synthetic")];
        using SileroSpeechDetector detector = new(silero);
        using FileHearing hearing = new(silero);

        AudioClip[] whispers = [.. folders.SelectMany(folder => Directory.GetFiles(folder, "*nicole.wav")).Select(Quieter)];
        AudioClip[] missed = [.. whispers.Where(clip => WholeFileSegmenter.Segment(detector, clip.Samples) is null)];

        missed.ShouldNotBeEmpty();
        missed.ShouldAllBe(clip => hearing.Speech(clip) != null);
    }

    [Fact]
    public void A_whisper_of_which_Silero_finds_a_tenth_of_a_second_is_found_but_for_its_soft_ends()
    {
        string silero = SileroHere();
        string clip = Shared.Audio("dialogue-synthetic/n081-af_nicole.wav"); // "wrong"
        using FileHearing hearing = new(silero);

        hearing.Speech(WavReader.Read(clip).Clip!).ShouldNotBeNull().Duration.TotalSeconds.ShouldBeGreaterThan(0.4);
    }

    /// <summary>A voice of breath, as from two metres off: 26 dB below.</summary>
    private static AudioClip Quieter(string file)
    {
        AudioClip clip = WavReader.Read(file).Clip!;
        return clip with { Samples = [.. clip.Samples.Select(sample => sample * 0.05f)] };
    }

    private static string SileroHere()
    {
        string path = Path.Combine(Environment.GetEnvironmentVariable("HANDSFREE_TOOLS") ?? "", "vad", "silero_vad_v6.onnx");
        Assert.SkipUnless(File.Exists(path), "silero_vad_v6.onnx is not in the folder that HANDSFREE_TOOLS names");
        return path;
    }
}
