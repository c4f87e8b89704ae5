using HandsFree.App.Hear;
using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Meanings;
using HandsFree.Speech;
using HandsFree.Speech.Scripted;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Session;

/// <summary>The ear alone: which sound becomes an event, and with which time.</summary>
public sealed class EarTests
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 3, 12, 0, 0, TimeSpan.Zero);
    private const float Loud = 0.4f, Soft = 0.06f, Quiet = 0;
    private static readonly ListeningGrammars Grammars = new(new GrammarShelf(Path.Combine(Shared.Repository, "grammars")));
    private static readonly Listening YesNo = new(ListeningKind.YesNo);

    [Fact]
    public void Speech_becomes_an_utterance_with_the_time_at_which_it_began()
    {
        List<SessionEvent> posted = Hear(Noon, "yes", (0, 1_000, Quiet), (1_000, 600, Loud), (1_600, 1_500, Quiet));
        SessionEvent.SpeechOver over = posted[^1].ShouldBeOfType<SessionEvent.SpeechOver>();
        var utterance = over.Heard.ShouldBeOfType<DialogueEvent.Utterance>();
        utterance.Meaning.ShouldBe(new Meaning.Answer(true));
        (utterance.At - Noon).TotalMilliseconds.ShouldBeInRange(960, 1_000);
        utterance.Margin.ShouldBeNull();
    }

    [Fact]
    public void Speech_that_began_before_the_listening_in_force_is_dropped_unheard() =>
        Hear(Noon + TimeSpan.FromSeconds(1.2), null, (0, 1_000, Quiet), (1_000, 600, Loud), (1_600, 1_500, Quiet))
            .ShouldBe([new SessionEvent.SpeechBegan(1), new SessionEvent.SpeechOver(1, null)]);

    [Fact]
    public void A_gap_between_frames_ends_the_speech_that_it_cut_off() =>
        Hear(Noon, null, (0, 500, Loud), (2_000, 1_500, Quiet))
            .ShouldBe([new SessionEvent.SpeechBegan(1), new SessionEvent.SpeechOver(1, null)]);

    [Fact]
    public void What_was_decoded_in_the_pause_is_the_answer_and_is_not_decoded_again()
    {
        var (posted, engine) = Play([Heard.In(Grammars.For(YesNo)!, "yes")], Noon, (0, 1_000, Quiet), (1_000, 600, Loud), (1_600, 1_500, Quiet));
        engine.Asked.Count.ShouldBe(1);
        Meant(posted).ShouldBe(new Meaning.Answer(true));
    }

    [Fact]
    public void What_was_decoded_in_a_pause_is_void_when_speech_goes_on()
    {
        HandsFree.Speech.Hearing tooEarly = new(HearingOutcome.NoReading, [], "");
        var (posted, engine) = Play([tooEarly, Heard.In(Grammars.For(YesNo)!, "no")], Noon,
            (0, 1_000, Quiet), (1_000, 600, Loud), (1_600, 300, Quiet), (1_900, 600, Loud), (2_500, 1_500, Quiet));
        engine.Asked.Count.ShouldBe(2);
        Meant(posted).ShouldBe(new Meaning.Answer(false));
    }

    [Fact]
    public void Talk_behind_the_speaker_does_not_keep_the_ear_open_and_a_complete_answer_stands()
    {
        var (posted, engine) = Play([Heard.In(Grammars.For(YesNo)!, "yes")], Noon, (0, 600, Loud), (600, 3_000, Soft));
        engine.Asked.Count.ShouldBe(1);
        posted.OfType<SessionEvent.SpeechOver>().First().Heard.ShouldBeOfType<DialogueEvent.Utterance>().Meaning.ShouldBe(new Meaning.Answer(true));
    }

    [Fact]
    public void What_came_softly_after_a_pause_is_decoded_with_it_where_the_answer_was_not_complete()
    {
        HandsFree.Speech.Hearing begun = new(HearingOutcome.NoReading, [], "");
        var (posted, engine) = Play([begun, Heard.In(Grammars.For(YesNo)!, "yes")], Noon, (0, 600, Loud), (600, 600, Soft), (1_200, 1_500, Quiet));
        engine.Asked.Count.ShouldBe(2);
        Meant(posted).ShouldBe(new Meaning.Answer(true));
    }

    [Fact]
    public void Speech_without_end_is_passed_over()
    {
        var (posted, engine) = Play([], Noon, (0, 15_100, Loud));
        engine.Asked.ShouldBeEmpty();
        posted.OfType<SessionEvent.SpeechOver>().First().Heard.ShouldBeNull();
    }

    [Fact]
    public void The_grammar_in_force_is_prepared_before_speech_begins()
    {
        var (_, engine) = Play([], Noon, (0, 500, Quiet));
        engine.Prepared.ShouldBe([Grammars.For(YesNo)!]);
        engine.Asked.ShouldBeEmpty();
    }

    private static Meaning Meant(List<SessionEvent> posted) =>
        posted.OfType<SessionEvent.SpeechOver>().ShouldHaveSingleItem().Heard.ShouldBeOfType<DialogueEvent.Utterance>().Meaning;

    private static List<SessionEvent> Hear(DateTimeOffset since, string? heard, params (int At, int Length, float Peak)[] sound) =>
        Play(heard is null ? [] : [Heard.In(Grammars.For(YesNo)!, heard)], since, sound).Posted;

    private static (List<SessionEvent> Posted, ScriptedRecognizer Engine) Play(
        HandsFree.Speech.Hearing[] answers, DateTimeOffset since, params (int At, int Length, float Peak)[] sound)
    {
        EventQueue queue = new();
        using PlayedSound microphone = new(Noon, sound);
        using LoudIsSpeech detector = new();
        using ScriptedRecognizer engine = new(answers);
        Ear ear = new(microphone, detector, engine, Grammars, new EchoGate(TimeSpan.Zero, TimeSpan.Zero), queue, new SessionSettings());
        ear.Listen(new ListeningInForce(1, YesNo, since));
        ear.Run(TestContext.Current.CancellationToken);
        queue.Post(new SessionEvent.EarEnded(null));
        List<SessionEvent> posted = [];
        while (queue.Take(TestContext.Current.CancellationToken) is var next and not SessionEvent.EarEnded)
        {
            posted.Add(next);
        }

        return (posted, engine);
    }

    /// <summary>Sound of given pieces, in milliseconds; what no piece covers is a gap.</summary>
    private sealed class PlayedSound(DateTimeOffset begins, (int At, int Length, float Peak)[] pieces) : IMicrophone
    {
        private readonly Queue<(int At, float Peak)> frames = new(
            pieces.SelectMany(p => Enumerable.Range(0, p.Length / 20).Select(i => (p.At + (20 * i), p.Peak))));

        public MicrophoneFrame? Read(CancellationToken stop) => frames.TryDequeue(out var frame)
            ? new MicrophoneFrame(
                begins + TimeSpan.FromMilliseconds(frame.At),
                Enumerable.Range(0, 320).Select(i => i % 80 < 40 ? frame.Peak : -frame.Peak).ToArray())
            : null;

        public void Dispose()
        {
            // Holds no device.
        }
    }
}
