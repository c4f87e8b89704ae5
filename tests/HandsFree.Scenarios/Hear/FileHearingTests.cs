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
        string? tools = Environment.GetEnvironmentVariable("HANDSFREE_TOOLS");
        string silero = Path.Combine(tools ?? "", "vad", "silero_vad_v6.onnx");
        Assert.SkipUnless(File.Exists(silero), "silero_vad_v6.onnx is not in the folder that HANDSFREE_TOOLS names");
        string folder = Shared.Audio("dictation-synthetic");
        using SileroSpeechDetector detector = new(silero);
        using FileHearing hearing = new(silero);

        AudioClip[] clips = [.. Directory.GetFiles(folder, "*nicole.wav").Select(file => WavReader.Read(file).Clip!)];
        AudioClip[] missed = [.. clips.Where(clip => WholeFileSegmenter.Segment(detector, clip.Samples) is null)];

        missed.ShouldNotBeEmpty();
        missed.ShouldAllBe(clip => hearing.Speech(clip) != null);
    }
}
