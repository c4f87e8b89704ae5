using HandsFree.Audio.Endpointing;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Endpointing;

/// <summary>The two time-outs of VoiceXML 2.0 (W3C Recommendation, 16 March 2004, section 6.3.2): completetimeout and incompletetimeout.</summary>
public sealed class TimeoutTests
{
    private const int Frame = EndpointerRun.Frame;

    [Fact]
    public void An_answer_of_which_nothing_is_known_ends_after_900_ms_of_quiet()
    {
        EndpointerRun run = new EndpointerRun("....SSSSSS").Feed((10 + 28) * Frame);
        run.Segments.ShouldBeEmpty();

        run.Feed(Frame).Segments.ShouldHaveSingleItem();
    }

    [Fact]
    public void An_answer_that_is_complete_ends_after_500_ms_of_quiet()
    {
        EndpointerRun run = new EndpointerRun("....SSSSSS", answer: Complete).Feed((10 + 15) * Frame);
        run.Segments.ShouldBeEmpty();

        run.Feed(Frame).Segments.ShouldHaveSingleItem();
    }

    [Fact]
    public void A_pause_inside_a_reading_does_not_cut_it()
    {
        // "blood pressure one eighteen" - 800 ms - "over seventy six"
        SpeechSegment segment = new EndpointerRun("....SSSSSSSSSS" + new string('.', 25) + "SSSSSSSS").Feed(100 * Frame)
            .Segments.ShouldHaveSingleItem();

        segment.SpeechTime.ShouldBe(TimeSpan.FromMilliseconds(18 * 32));
        segment.Duration.ShouldBe(TimeSpan.FromMilliseconds(43 * 32));
    }

    [Fact]
    public void After_200_ms_of_quiet_the_speech_so_far_is_handed_out_once()
    {
        EndpointerRun run = new EndpointerRun("....SSSSSS").Feed((10 + 6) * Frame);
        run.Story().ShouldBe("SpeechStarted");

        run.Feed(10 * Frame);

        run.Story().ShouldBe("SpeechStarted SpeechPaused");
        SpeechSegment soFar = run.Events.OfType<EndpointEvent.SpeechPaused>().Single().SoFar;
        soFar.End.ShouldBe(SegmentEnd.Pause);
        soFar.SpeechEnd.ShouldBe(10 * Frame);
        soFar.Samples.Length.ShouldBe(6_400 + (6 * Frame) + 6_400);
        soFar.Samples[6_400 + (6 * Frame) + (7 * Frame) - 1].ShouldBe(EndpointerRun.SampleAt((17 * Frame) - 1));
        soFar.Samples[^1].ShouldBe(0);
    }

    [Fact]
    public void Speech_that_goes_on_makes_the_pause_void()
    {
        EndpointerRun run = new EndpointerRun("....SSSSSS..........SSSS").Feed(80 * Frame);

        run.Story().ShouldBe("SpeechStarted SpeechPaused SpeechResumed SpeechPaused SpeechEnded");
        run.Events.OfType<EndpointEvent.SpeechResumed>().Single().Pause.ShouldBe(1);
        run.Events.OfType<EndpointEvent.SpeechPaused>().Select(p => p.Pause).ShouldBe([1, 2]);
    }

    [Fact]
    public void That_an_earlier_pause_was_complete_does_not_shorten_a_later_one()
    {
        // Complete at the first pause; the speaker goes on; the answer for the first comes again, late, at the second.
        EndpointerRun run = new(
            "....SSSSSS..........SSSS",
            answer: (endpointer, e) =>
            {
                if (e is EndpointEvent.SpeechPaused)
                {
                    endpointer.CompleteAnswer(1);
                }
            });

        run.Feed((24 + 28) * Frame).Segments.ShouldBeEmpty();

        run.Feed(Frame).Segments.ShouldHaveSingleItem();
    }

    [Fact]
    public void A_complete_answer_does_not_shorten_the_next_one()
    {
        bool first = true;
        EndpointerRun run = new(
            "....SSSSSS" + new string('.', 20) + "SSSSSS",
            answer: (endpointer, e) =>
            {
                if (e is EndpointEvent.SpeechPaused paused && first)
                {
                    first = false;
                    endpointer.CompleteAnswer(paused.Pause);
                }
            });

        run.Feed((36 + 28) * Frame).Segments.Count.ShouldBe(1);

        run.Feed(Frame).Segments.Count.ShouldBe(2);
    }

    [Fact]
    public void A_number_of_no_pause_changes_nothing()
    {
        EndpointerRun run = new("....SSSSSS");
        run.Endpointer.CompleteAnswer(0);

        run.Feed((10 + 28) * Frame).Segments.ShouldBeEmpty();
    }

    [Fact]
    public void Options_that_contradict_each_other_are_refused()
    {
        Refused(new EndpointerOptions { OffThreshold = 0.6f });
        Refused(new EndpointerOptions { CompleteTimeout = TimeSpan.FromSeconds(1) });
        Refused(new EndpointerOptions { PauseQuiet = TimeSpan.FromSeconds(0.6) });
        Refused(new EndpointerOptions { MinimumSpeech = TimeSpan.Zero });
        Refused(new EndpointerOptions { MaximumSpeech = TimeSpan.FromMilliseconds(10) });
        Refused(new EndpointerOptions { Padding = TimeSpan.FromMilliseconds(-1) });
    }

    private static void Refused(EndpointerOptions options) =>
        Should.Throw<ArgumentException>(() => new Endpointer(new ScriptedDetector(""), options, _ => { }));

    private static void Complete(Endpointer endpointer, EndpointEvent e)
    {
        if (e is EndpointEvent.SpeechPaused paused)
        {
            endpointer.CompleteAnswer(paused.Pause);
        }
    }
}
