using HandsFree.Audio.Levels;
using HandsFree.Benchmarks.Microphone;
using HandsFree.Benchmarks.Tests.Recordings;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Microphone;

public sealed class MicrophoneFaultsTests
{
    private const int BuzzStart = 5_000;
    private static readonly float[] Speech = RecordingFolder.Buzz(150);

    [Fact]
    public void Speech_begins_where_it_gets_loud() => MicrophoneFaults.Onset(Speech).ShouldBeInRange(BuzzStart - 160, BuzzStart + 160);

    [Fact]
    public void A_late_microphone_loses_the_beginning_of_the_speech_and_what_was_before()
    {
        float[] cut = MicrophoneFaults.Parse("cut:50").AtMicrophone(Speech, BuzzStart);

        cut.ShouldBe(Speech[(BuzzStart + 800)..]);
    }

    [Fact]
    public void Several_faults_work_in_the_order_of_the_way()
    {
        float[] one = MicrophoneFaults.Parse("dc:0.2,level:-30,cut").AtMicrophone(Speech, BuzzStart);
        float[] other = MicrophoneFaults.Parse("cut:80, level:-30,dc:0.2").AtMicrophone(Speech, BuzzStart);

        one.ShouldBe(other);
        one.Length.ShouldBe(Speech.Length - BuzzStart - 1_280);
        SpeechLevel.ActiveDbfs([.. one.Select(sample => sample - 0.2f)]).ShouldBe(-30, 0.05);
    }

    [Fact]
    public void Clipped_speech_reaches_full_scale_and_stays_there()
    {
        LevelMeter.Measure(MicrophoneFaults.Parse("clip").AtMicrophone(Speech, 0)).ClippedShare.ShouldBeGreaterThan(0.01);
        LevelMeter.Measure(Speech).ClippedShare.ShouldBe(0);
    }

    [Fact]
    public void A_narrow_band_leaves_the_length()
    {
        float[] narrow = MicrophoneFaults.Parse("band8k").AtMicrophone(Speech, 0);

        narrow.Length.ShouldBe(Speech.Length);
        narrow.ShouldNotBe(Speech);
    }

    [Fact]
    public void A_room_is_there_before_the_microphone_and_only_where_asked_for()
    {
        MicrophoneFaults.Parse("band8k").InRoom(Speech, 1).ShouldBeSameAs(Speech);
        MicrophoneFaults.Parse("reverb:0.5").InRoom(Speech, 1).Length.ShouldBe(Speech.Length + 8_000 - 1);
        MicrophoneFaults.Parse("reverb").AtMicrophone(Speech, 0).ShouldBe(Speech);
    }

    [Theory]
    [InlineData("echo", "no such fault")]
    [InlineData("", "no such fault")]
    [InlineData("band8k:3", "no such fault")]
    [InlineData("level", "needs a number from -100 to 0")]
    [InlineData("level:3", "needs a number from -100 to 0")]
    [InlineData("clip:loud", "needs a number from 0 to 60")]
    [InlineData("dc,reverb:0", "needs a number from 0.05 to 10")]
    public void What_can_not_be_is_named(string text, string error) =>
        Should.Throw<InvalidDataException>(() => MicrophoneFaults.Parse(text)).Message.ShouldContain(error);
}
