using HandsFree.Audio.Endpointing;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Endpointing;

/// <summary>Others talk in the room, 20 dB softer than the speaker.</summary>
public sealed class NearVoiceTests
{
    private const int Frame = EndpointerRun.Frame;
    private const int Smoothing = 2 * Frame;

    [Fact]
    public void Soft_talk_after_the_speech_does_not_keep_it_open()
    {
        EndpointerRun run = new EndpointerRun("....SSSSSS" + new string('s', 100)).Feed((10 + 2 + 29) * Frame);
        EndpointEvent.SpeechEnded ended = run.Events.OfType<EndpointEvent.SpeechEnded>().ShouldHaveSingleItem();
        ended.Segment.SpeechEnd.ShouldBeInRange(10 * Frame, (10 * Frame) + Smoothing);
        ended.FollowedSoftly.ShouldBeTrue();
    }

    [Fact]
    public void Quiet_after_the_speech_is_told_as_such() =>
        new EndpointerRun("....SSSSSS").Feed(60 * Frame).Events.OfType<EndpointEvent.SpeechEnded>().ShouldHaveSingleItem().FollowedSoftly.ShouldBeFalse();

    [Fact]
    public void Soft_talk_before_the_speech_is_not_part_of_it()
    {
        SpeechSegment segment = new EndpointerRun(new string('s', 40) + "SSSSSS").Feed(100 * Frame).Segments.ShouldHaveSingleItem();
        segment.SpeechStart.ShouldBe(40 * Frame);
        segment.SpeechTime.ShouldBe(TimeSpan.FromMilliseconds(6 * 32));
    }

    [Fact]
    public void A_speaker_who_is_soft_herself_is_heard() =>
        new EndpointerRun("....ssssss").Feed(60 * Frame).Segments.ShouldHaveSingleItem().SpeechStart.ShouldBe(4 * Frame);

    [Fact]
    public void Soft_talk_in_a_pause_is_not_speech_that_goes_on()
    {
        EndpointerRun run = new EndpointerRun("....SSSSSS" + new string('s', 10) + "SSS").Feed(100 * Frame);
        run.Story().ShouldBe("SpeechStarted SpeechPaused SpeechResumed SpeechPaused SpeechEnded");
    }
}
