using HandsFree.Audio;
using HandsFree.Audio.Endpointing;
using HandsFree.Core.Dialogue;
using HandsFree.Language.Grammars;
using HandsFree.Speech;

namespace HandsFree.App.Session;

/// <summary>Listens: frames, speech, engine, event; all of it on one thread of its own. Decoding begins in a short pause and is
/// void when speech goes on, so that the answer is known about as soon as its end is.</summary>
internal sealed class Ear(
    IMicrophone microphone,
    ISpeechDetector detector,
    IRecognizer recognizer,
    ListeningGrammars grammars,
    EchoGate echo,
    TalkSwitch talk,
    EventQueue queue,
    SessionSettings settings)
{
    private Endpointer? endpointer;
    private OpenSpeech? open;
    private DateTimeOffset? expected;
    private DateTimeOffset frameAt;
    private long framePosition;
    private volatile ListeningInForce? inForce;
    private int prepared;

    /// <summary>From now on this is listened for; from any thread.</summary>
    public void Listen(ListeningInForce listening) => inForce = listening;

    /// <summary>Reads the microphone until it ends or the session does.</summary>
    public void Run(CancellationToken stop)
    {
        endpointer = new Endpointer(detector, settings.Endpointing, Heard);
        while (microphone.Read(stop) is { } frame)
        {
            Take(endpointer, frame);
        }
    }

    private void Take(Endpointer into, MicrophoneFrame frame)
    {
        Prepare();
        DateTimeOffset end = frame.At + SampleTime.Of(frame.Samples.Length);
        if (expected is { } at && frame.At - at > settings.LongestGap)
        {
            into.Skip(SampleTime.Samples(frame.At - at));
            Forget();
        }

        expected = end;
        if (echo.Covers(frame.At, end) || !talk.IsOpen(frame.At))
        {
            into.Skip(frame.Samples.Length);
            Forget();
            return;
        }

        (frameAt, framePosition) = (frame.At, into.Position);
        into.Feed(frame.Samples.Span);
    }

    // Between two frames, mostly while the question is still being said: the first answer then doesn't wait for its grammar. Not all
    // grammars at the start: each keeps some memory.
    private void Prepare()
    {
        if (open is null && inForce is { } listening && listening.Number != prepared)
        {
            prepared = listening.Number;
            if (grammars.For(listening.For) is { } grammar)
            {
                recognizer.Prepare(grammar);
            }
        }
    }

    private void Heard(EndpointEvent happened)
    {
        switch (happened)
        {
            case EndpointEvent.SpeechStarted e:
                Begin(e.Position);
                break;
            case EndpointEvent.SpeechPaused e when open?.Grammar is { } grammar:
                Speech.Hearing soFar = recognizer.Hear(e.SoFar.Samples, grammar);
                open.SoFar = soFar;
                open.IsComplete = Continuations.IsComplete(grammar, soFar);
                if (open.IsComplete)
                {
                    endpointer!.CompleteAnswer(e.Pause);
                }

                break;
            case EndpointEvent.SpeechResumed when open is not null:
                (open.SoFar, open.IsComplete) = (null, false);
                break;
            case EndpointEvent.SpeechEnded e:
                End(e);
                break;
        }
    }

    private void Begin(long position)
    {
        if (inForce is not { } listening)
        {
            return;
        }

        DateTimeOffset at = frameAt + SampleTime.Of(position - framePosition);
        Grammar? grammar = at >= listening.Since ? grammars.For(listening.For) : null;
        open = new OpenSpeech(listening.Number, at, grammar);
        queue.Post(new SessionEvent.SpeechBegan(listening.Number));
    }

    private void End(EndpointEvent.SpeechEnded ended)
    {
        if (open is not { } speech)
        {
            return;
        }

        open = null;
        DialogueEvent? heard = null;
        // No sentence is as long as the longest speech: others talk.
        if (speech.Grammar is { } grammar && ended.Segment.End != SegmentEnd.TooLong)
        {
            // What came softly after the pause may be the end of it, unless it is complete without.
            bool stands = speech.SoFar is not null && (speech.IsComplete || !ended.FollowedSoftly);
            Speech.Hearing hearing = stands ? speech.SoFar! : recognizer.Hear(ended.Segment.Samples, grammar);
            heard = Understanding.Of(hearing, speech.At, ended.Segment.Level.RmsDbfs, settings.WeightUnit);
        }

        queue.Post(new SessionEvent.SpeechOver(speech.Listening, heard, heard is null ? default : ended.Segment.Samples));
    }

    // Speech that the program's own voice or a gap cut off is not answered.
    private void Forget()
    {
        if (open is { } speech)
        {
            open = null;
            queue.Post(new SessionEvent.SpeechOver(speech.Listening, null));
        }
    }

    /// <summary>Speech that has begun; without a grammar it is not for what is listened for.</summary>
    private sealed class OpenSpeech(int listening, DateTimeOffset at, Grammar? grammar)
    {
        public int Listening { get; } = listening;

        public DateTimeOffset At { get; } = at;

        public Grammar? Grammar { get; } = grammar;

        public Speech.Hearing? SoFar { get; set; }

        public bool IsComplete { get; set; }
    }
}
