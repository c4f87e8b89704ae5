using HandsFree.Audio.Endpointing;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Endpointing;

public sealed class WholeFileSegmenterTests
{
    private const int Frame = EndpointerRun.Frame;

    [Fact]
    public void One_segment_reaches_from_the_first_to_the_last_speech_whatever_the_pause_between()
    {
        SpeechSegment segment = Segment("..............SSS" + new string('.', 60) + "SSSS", 100 * Frame).ShouldNotBeNull();

        segment.SpeechStart.ShouldBe(14 * Frame);
        segment.SpeechEnd.ShouldBe(81 * Frame);
        segment.SpeechTime.ShouldBe(TimeSpan.FromMilliseconds(7 * 32));
        segment.Samples.Length.ShouldBe((67 * Frame) + 12_800);
        segment.Samples[0].ShouldBe(EndpointerRun.SampleAt((14 * Frame) - 6_400));
        segment.Samples[^1].ShouldBe(EndpointerRun.SampleAt((81 * Frame) + 6_399));
    }

    [Fact]
    public void A_file_cut_tight_is_padded_with_zeros_and_keeps_all_it_has()
    {
        SpeechSegment segment = Segment("SSSSSSSSSSSSSSSSSSSS", 20 * Frame).ShouldNotBeNull();

        segment.Samples.Length.ShouldBe((20 * Frame) + 12_800);
        segment.Samples[..6_400].ShouldAllBe(sample => sample == 0);
        segment.Samples[6_400..^6_400].ShouldBe(Ramp(20 * Frame));
        segment.Samples[^6_400..].ShouldAllBe(sample => sample == 0);
    }

    [Theory]
    [InlineData(2 * Frame)]
    [InlineData(Frame + 600)]
    public void Even_the_shortest_word_gets_a_whole_second(int length)
    {
        SpeechSegment segment = Segment("SSS", length).ShouldNotBeNull();

        segment.SpeechEnd.ShouldBe(length);
        segment.Samples.Length.ShouldBe(16_000);
        segment.Samples.Count(sample => sample != 0).ShouldBe(length);
    }

    [Fact]
    public void Weak_sounds_between_the_thresholds_before_and_after_are_kept()
    {
        SpeechSegment segment = Segment(new string('.', 20) + "mmmmmSSmmmm", 60 * Frame).ShouldNotBeNull();

        segment.SpeechStart.ShouldBe(20 * Frame);
        segment.SpeechEnd.ShouldBe(31 * Frame);
    }

    [Fact]
    public void A_click_far_from_the_speech_does_not_stretch_it()
    {
        SpeechSegment segment = Segment("S" + new string('.', 40) + "SSSSS", 80 * Frame).ShouldNotBeNull();

        segment.SpeechStart.ShouldBe(41 * Frame);
    }

    [Theory]
    [InlineData("")]
    [InlineData("...S....mmmm...S...")]
    public void Without_speech_there_is_no_segment(string script) => Segment(script, 40 * Frame).ShouldBeNull();

    [Fact]
    public void An_empty_recording_has_no_segment() => Segment("SSSS", 0).ShouldBeNull();

    private static float[] Ramp(int length) => [.. Enumerable.Range(0, length).Select(at => EndpointerRun.SampleAt(at))];

    private static SpeechSegment? Segment(string script, int length) =>
        WholeFileSegmenter.Segment(new ScriptedDetector(script), Ramp(length));
}
