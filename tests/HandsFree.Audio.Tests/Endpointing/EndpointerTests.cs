using HandsFree.Audio.Endpointing;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Endpointing;

public sealed class EndpointerTests
{
    private const int Frame = EndpointerRun.Frame;
    private static readonly string Quiet = new('.', 20);

    [Fact]
    public void Speech_between_quiet_is_one_segment_with_400_ms_of_the_streams_own_sound_on_both_sides()
    {
        EndpointerRun run = new EndpointerRun(Quiet + "SSSSSSSSSS").Feed(80 * Frame);

        SpeechSegment segment = run.Segments.ShouldHaveSingleItem();
        segment.SpeechStart.ShouldBe(20 * Frame);
        segment.SpeechEnd.ShouldBe(30 * Frame);
        segment.SpeechTime.ShouldBe(TimeSpan.FromMilliseconds(320));
        segment.Duration.ShouldBe(TimeSpan.FromMilliseconds(320));
        segment.Position.ShouldBe((20 * Frame) - 6_400);
        segment.Samples.Length.ShouldBe(6_400 + (10 * Frame) + 6_400);
        segment.Samples[0].ShouldBe(EndpointerRun.SampleAt(segment.Position));
        segment.Samples[^1].ShouldBe(EndpointerRun.SampleAt((30 * Frame) + 6_399));
        segment.End.ShouldBe(SegmentEnd.Quiet);
        run.Story().ShouldBe("SpeechStarted SpeechPaused SpeechEnded");
    }

    [Fact]
    public void Where_the_stream_has_no_quiet_before_the_speech_zeros_stand()
    {
        SpeechSegment segment = new EndpointerRun("..SSSSSSSSSS").Feed(80 * Frame).Segments.ShouldHaveSingleItem();

        segment.Position.ShouldBe((2 * Frame) - 6_400);
        int zeros = (int)-segment.Position;
        segment.Samples.Take(zeros).ShouldAllBe(sample => sample == 0);
        segment.Samples[zeros].ShouldBe(EndpointerRun.SampleAt(0));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(100)]
    [InlineData(512)]
    [InlineData(100_000)]
    public void Pieces_of_any_size_give_the_same(int pieces)
    {
        const string Script = "....SSSSSS.......SSSS..........................................SSSSS";
        EndpointerRun expected = new EndpointerRun(Script).Feed(120 * Frame, 512);

        EndpointerRun run = new EndpointerRun(Script).Feed(120 * Frame, pieces);

        run.Story().ShouldBe(expected.Story());
        run.Segments.Select(s => (s.Position, s.SpeechStart, s.SpeechEnd)).ShouldBe(
            expected.Segments.Select(s => (s.Position, s.SpeechStart, s.SpeechEnd)));
        run.Segments.Zip(expected.Segments).ShouldAllBe(pair => pair.First.Samples.SequenceEqual(pair.Second.Samples));
    }

    [Theory]
    [InlineData("....S....")]
    [InlineData("....S.......S....")]
    [InlineData("....mmmmmmmm....")]
    public void A_click_is_no_speech(string script) => new EndpointerRun(script).Feed(80 * Frame).Events.ShouldBeEmpty();

    [Fact]
    public void Two_frames_close_together_are_the_shortest_speech() =>
        new EndpointerRun("....S..S").Feed(80 * Frame).Segments.ShouldHaveSingleItem().SpeechTime.ShouldBe(TimeSpan.FromMilliseconds(64));

    [Fact]
    public void Speech_goes_on_through_frames_between_the_thresholds()
    {
        SpeechSegment segment = new EndpointerRun(Quiet + "SSmmmmmmmmmmmmSS").Feed(80 * Frame).Segments.ShouldHaveSingleItem();

        segment.SpeechTime.ShouldBe(TimeSpan.FromMilliseconds(16 * 32));
    }

    [Fact]
    public void After_a_pause_a_frame_between_the_thresholds_is_quiet()
    {
        SpeechSegment segment = new EndpointerRun(Quiet + "SSSS.mmmmmmmmmmmm").Feed(80 * Frame).Segments.ShouldHaveSingleItem();

        segment.SpeechEnd.ShouldBe(24 * Frame);
    }

    [Fact]
    public void The_longest_speech_ends_the_segment_and_says_so_and_the_next_begins_where_it_ended()
    {
        EndpointerOptions options = new() { MaximumSpeech = TimeSpan.FromSeconds(2) };
        EndpointerRun run = new EndpointerRun(Quiet + new string('S', 100), options).Feed(180 * Frame);

        run.Segments.Select(s => s.End).ShouldBe([SegmentEnd.TooLong, SegmentEnd.Quiet]);
        run.Segments[0].Duration.ShouldBe(TimeSpan.FromMilliseconds(63 * 32));
        run.Segments[1].SpeechStart.ShouldBe(run.Segments[0].SpeechEnd);
        run.Segments[1].Samples.Take(6_400).ShouldAllBe(sample => sample == 0);
    }

    [Fact]
    public void Fifteen_seconds_are_the_longest_by_default()
    {
        EndpointerRun run = new EndpointerRun(Quiet + new string('S', 600)).Feed(800 * Frame);

        run.Segments[0].Duration.ShouldBe(TimeSpan.FromMilliseconds(469 * 32));
        run.Segments[0].End.ShouldBe(SegmentEnd.TooLong);
    }

    [Fact]
    public void The_end_of_the_stream_ends_the_speech_that_is_open()
    {
        EndpointerRun run = new EndpointerRun(Quiet + "SSSSSS").Feed((25 * Frame) + 100);
        run.Segments.ShouldBeEmpty();

        run.Endpointer.Flush();

        SpeechSegment segment = run.Segments.ShouldHaveSingleItem();
        segment.End.ShouldBe(SegmentEnd.StreamEnded);
        segment.SpeechEnd.ShouldBe((25 * Frame) + 100);
        segment.Samples[^6_401].ShouldBe(EndpointerRun.SampleAt((25 * Frame) + 99));
        segment.Samples[^6_400..].ShouldAllBe(sample => sample == 0);
    }

    [Fact]
    public void A_stream_that_ends_in_quiet_ends_without_an_event()
    {
        EndpointerRun run = new EndpointerRun("....").Feed(10 * Frame);

        run.Endpointer.Flush();

        run.Events.ShouldBeEmpty();
    }

    [Fact]
    public void Passed_over_samples_count_in_the_positions_and_end_what_was_open()
    {
        EndpointerRun run = new EndpointerRun("SSSSSSSS" + "....SSSS").Feed(8 * Frame);

        run.Endpointer.Skip(10_000);
        run.Endpointer.Position.ShouldBe((8 * Frame) + 10_000);
        run.Feed(60 * Frame);

        run.Detector.Resets.ShouldBe(1);
        SpeechSegment segment = run.Segments.ShouldHaveSingleItem();
        segment.SpeechStart.ShouldBe((12 * Frame) + 10_000);
        segment.Samples.Take(6_400 - (4 * Frame)).ShouldAllBe(sample => sample == 0);
    }

    [Fact]
    public void The_level_is_that_of_the_speech_alone()
    {
        ScriptedDetector detector = new(Quiet + "SSSSSSSSSS");
        List<SpeechSegment> segments = [];
        Endpointer endpointer = new(detector, new EndpointerOptions(), e =>
        {
            if (e is EndpointEvent.SpeechEnded ended)
            {
                segments.Add(ended.Segment);
            }
        });

        endpointer.Feed(new float[20 * Frame]);
        endpointer.Feed([.. Enumerable.Repeat(0.1f, 10 * Frame)]);
        endpointer.Feed([.. Enumerable.Repeat(1f, 40 * Frame)]);

        segments.ShouldHaveSingleItem().Level.RmsDbfs.ShouldBe(-20, 0.01);
        segments[0].Level.PeakDbfs.ShouldBe(-20, 0.01);
        segments[0].Level.ClippedShare.ShouldBe(0);
    }
}
