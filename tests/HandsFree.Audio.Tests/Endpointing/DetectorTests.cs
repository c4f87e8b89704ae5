using HandsFree.Audio.Endpointing;
using HandsFree.Audio.Noise;
using HandsFree.Audio.Tests.Bad;
using HandsFree.Audio.Tests.Signals;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Endpointing;

public sealed class DetectorTests
{
    [Theory]
    [InlineData("silero")]
    [InlineData("energy")]
    public void Silence_noise_breath_and_clicks_are_no_speech(string name)
    {
        using ISpeechDetector detector = Detectors.Open(name);
        foreach ((string sound, float[] samples) in NoSpeech())
        {
            Count(detector, samples).ShouldBe(0, sound);
            WholeFileSegmenter.Segment(detector, samples).ShouldBeNull(sound);
        }
    }

    [Theory]
    [InlineData("silero")]
    [InlineData("energy")]
    public void After_a_reset_the_same_sound_is_judged_the_same(string name)
    {
        using ISpeechDetector detector = Detectors.Open(name);
        float[] sound = [.. PinkNoise.Make(5_000, 1, -50), .. Signal.Vowel(0.5)];
        detector.Reset();
        float[] first = Probabilities(detector, sound);

        detector.Reset();
        Probabilities(detector, sound).ShouldBe(first);
    }

    [Theory]
    [InlineData("silero")]
    [InlineData("energy")]
    public void A_frame_of_another_length_is_refused(string name)
    {
        using ISpeechDetector detector = Detectors.Open(name);

        detector.Name.ShouldBe(name);
        Should.Throw<ArgumentException>(() => detector.Probability(new float[511]));
    }

    [Theory]
    [InlineData(-60)]
    [InlineData(-40)]
    public void A_voiced_sound_above_the_noise_is_speech_for_the_energy_detector(double noise)
    {
        using EnergySpeechDetector detector = new();
        float[] vowel = Signal.Vowel(0.4);
        float[] samples = PinkNoise.Make(48_000, 3, noise);
        for (int i = 0; i < vowel.Length; i++)
        {
            samples[20_000 + i] += vowel[i];
        }

        SpeechSegment segment = WholeFileSegmenter.Segment(detector, samples).ShouldNotBeNull();

        segment.SpeechStart.ShouldBeInRange(20_000 - 512, 20_000 + 1_024);
        segment.SpeechEnd.ShouldBeInRange(26_400 - 1_536, 26_400 + 1_024);
        Count(detector, samples).ShouldBe(1);
    }

    [Fact]
    public void Where_the_model_is_there_Silero_detects()
    {
        DetectorChoice choice = DetectorChoice.Best(Detectors.SileroModel);
        using ISpeechDetector detector = choice.Detector;

        detector.Name.ShouldBe("silero");
        choice.WhyNotBetter.ShouldBeNull();
    }

    [Fact]
    public void Where_it_is_missing_or_broken_energy_does_and_the_reason_is_said()
    {
        using TemporaryFile broken = new("broken.onnx", [1, 2, 3]);

        Reason(null).ShouldBe("speech is detected by its energy: the Silero model is not there");
        Reason("gone.onnx").ShouldBe("speech is detected by its energy: gone.onnx is not there");
        Reason(broken.Path).ShouldStartWith($"speech is detected by its energy: {broken.Path} is not the file that was checked");
    }

    [Fact]
    public void A_model_that_is_missing_is_named() =>
        Should.Throw<FileNotFoundException>(() => new SileroSpeechDetector("gone.onnx")).FileName.ShouldBe("gone.onnx");

    private static string Reason(string? path)
    {
        DetectorChoice choice = DetectorChoice.Best(path);
        using ISpeechDetector detector = choice.Detector;
        detector.Name.ShouldBe("energy");
        return choice.WhyNotBetter.ShouldNotBeNull();
    }

    private static IEnumerable<(string Sound, float[] Samples)> NoSpeech()
    {
        yield return ("silence", new float[64_000]);
        foreach (int level in new[] { -50, -40, -30 })
        {
            yield return ($"pink noise at {level} dBFS", PinkNoise.Make(64_000, level + 100, level));
        }

        foreach (int level in new[] { -40, -30, -20 })
        {
            yield return ($"breath at {level} dBFS", NoSpeechSounds.Breath(level));
        }

        yield return ("click", NoSpeechSounds.Click());
    }

    private static float[] Probabilities(ISpeechDetector detector, float[] samples) =>
        [.. samples.Chunk(512).Where(frame => frame.Length == 512).Select(frame => detector.Probability(frame))];

    private static int Count(ISpeechDetector detector, float[] samples)
    {
        int count = 0;
        detector.Reset();
        Endpointer endpointer = new(detector, new EndpointerOptions(), e => count += e is EndpointEvent.SpeechEnded ? 1 : 0);
        endpointer.Feed(samples);
        endpointer.Flush();
        return count;
    }
}
