using System.Runtime.ExceptionServices;
using HandsFree.Audio.Devices;
using HandsFree.Core.Dialogue;

namespace HandsFree.App.Session;

/// <summary>The session: owns the dialogue's state and the one queue, carries out the effects in order. Everything that comes from
/// another thread comes through the queue.</summary>
internal sealed partial class SessionLoop : IDisposable
{
    private readonly SessionParts parts;
    private readonly EchoGate echo;
    private readonly Mouth mouth;
    private readonly Ear ear;
    private readonly JournalPen pen;
    private readonly KeptRound kept;
    private readonly SessionTimers timers;
    private readonly QuietWatch quiet;
    private readonly TalkSwitch talk;
    private readonly Hardware hardware;
    private readonly LockWatch locks;
    private readonly UnreadableNotice unreadable;
    private readonly Queue<DialogueEvent> answers = [];
    private DialogueState? state;
    private ListeningInForce listening;
    private string asked = "";
    private bool speaking;
    private bool led;
    private bool over;

    /// <summary>A session; <see cref="Run"/> runs it.</summary>
    public SessionLoop(SessionParts parts)
    {
        this.parts = parts;
        echo = new EchoGate(() => parts.Loudspeaker.Latency, parts.Settings.EchoTail);
        talk = new TalkSwitch(parts.PressToTalk);
        hardware = new Hardware(parts.HasMicrophone, talk);
        mouth = new Mouth(parts.Voice, parts.Loudspeaker, echo, Queue);
        ear = new Ear(parts.Microphone, parts.Detector, parts.Recognizer, parts.Grammars, echo, talk, Queue, parts.Settings);
        pen = new JournalPen(parts.Journal, () => Say("Another program has the record. I wait for it."));
        kept = new KeptRound(parts, pen);
        timers = new SessionTimers(parts.Time, Queue);
        locks = new LockWatch(parts, timers);
        unreadable = new UnreadableNotice(parts.Watcher, Say);
        quiet = new QuietWatch(parts.Time, Queue);
        listening = new ListeningInForce(0, new Listening(ListeningKind.Nothing, AnswerAwaited: false), Now);
    }

    /// <summary>The session's queue.</summary>
    public EventQueue Queue { get; } = new();

    /// <summary>Speech that was for a question that stood no more when it was over; it was dropped.</summary>
    public int DroppedSpeech { get; private set; }

    private DateTimeOffset Now => parts.Time.GetLocalNow();

    /// <summary>Runs the session to its end on the calling thread, the ear on a thread of its own.</summary>
    /// <param name="aide">The id of the aide.</param>
    /// <param name="session">Unique in the home; event ids begin with it.</param>
    /// <param name="stop">Ends it from outside.</param>
    /// <exception cref="OperationCanceledException">Ended from outside.</exception>
    public SessionEnd Run(string aide, string session, CancellationToken stop)
    {
        using var ending = CancellationTokenSource.CreateLinkedTokenSource(stop);
        TellMicrophone(null);
        Begin(aide, session);
        AnswerAll();
        unreadable.Tell(Now, parts.NotRead);
        locks.Watch(state!);
        EarThread hearing = new(ear, Queue, ending.Token);
        try
        {
            return TakeEvents(ending);
        }
        finally
        {
            ending.Cancel();
            Queue.Close();
            hearing.Join();
        }
    }

    /// <summary>The port for keys: what is typed means what the same words spoken mean; from any thread. "Stop" silences at once.</summary>
    public void Type(string text) => Queue.Post(new SessionEvent.Typed(text));

    /// <summary>The port for the microphone's key or foot switch; from any thread. It silences the program, and with press to talk it
    /// opens the microphone for one utterance, or closes it.</summary>
    public void Talk() => Queue.Post(new SessionEvent.TalkKey());

    /// <summary>The port for the devices: one went (why) or came back (null); from any thread.</summary>
    public void DeviceChanged(SoundFlow which, string? whyNot) => Queue.Post(new SessionEvent.DeviceChanged(which, whyNot));

    /// <inheritdoc/>
    public void Dispose()
    {
        timers.Dispose();
        quiet.Dispose();
    }

    private SessionEnd TakeEvents(CancellationTokenSource ending)
    {
        while (true)
        {
            SessionEvent happened = Queue.Take(ending.Token);
            try
            {
                if (happened is SessionEvent.EarEnded ended)
                {
                    if (ended.Failure is { } failure)
                    {
                        ExceptionDispatchInfo.Throw(failure);
                    }

                    return SessionEnd.MicrophoneEnded;
                }

                Handle(happened);
                if (over && !mouth.IsBusy)
                {
                    // Before the queue is idle again: nothing more is to be heard.
                    ending.Cancel();
                    return SessionEnd.Goodbye;
                }
            }
            finally
            {
                Queue.Done();
            }
        }
    }

    private void Handle(SessionEvent happened)
    {
        switch (happened)
        {
            case SessionEvent.TalkKey:
                mouth.Silence();
                talk.Turn(Now);
                TellMicrophone(null);
                break;
            case SessionEvent.DeviceChanged changed:
                Take(changed);
                break;
            case SessionEvent.SpeechBegan:
                speaking = true;
                quiet.Stop();
                break;
            case SessionEvent.SpeechOver speech:
                speaking = false;
                Take(speech);
                break;
            case SessionEvent.Typed typed when state!.Kind == StateKind.Locked:
                answers.Enqueue(locks.Typed(typed.Text, Now));
                AnswerAll();
                break;
            case SessionEvent.Typed typed:
                DialogueEvent meant = TypedWords.Understand(typed.Text, parts.Grammars.For(listening.For), Now, parts.Settings.WeightUnit);
                parts.Watcher.Saw(new SessionNote.Heard(Now, meant));
                Step(meant);
                break;
            case SessionEvent.PlaybackEnded when !mouth.IsBusy:
                Played();
                break;
            case SessionEvent.TimerElapsed { Name: LockWatch.Timer } elapsed when timers.Take(elapsed):
                Step(new DialogueEvent.LockDue(Now));
                break;
            case SessionEvent.TimerElapsed elapsed when timers.Take(elapsed):
                parts.Watcher.Saw(new SessionNote.Clock(Now, elapsed.Name, null));
                Step(new DialogueEvent.TimerElapsed(Now, elapsed.Name));
                break;
            case SessionEvent.QuietOver passed when quiet.Take(passed):
                led = led || !listening.For.AnswerAwaited;
                Step(new DialogueEvent.NothingHeard(Now));
                break;
        }
    }

    private void Take(SessionEvent.SpeechOver speech)
    {
        bool stands = speech.Listening == listening.Number;
        if (speech.Heard is not null && talk.Close())
        {
            TellMicrophone(null);
        }

        bool locked = state!.Kind == StateKind.Locked; // digits that unlock are shown to nobody
        parts.Watcher.Saw(new SessionNote.Heard(Now, stands && !locked ? speech.Heard : null));
        if (stands && speech.Heard is { } heard)
        {
            if (!locked)
            {
                parts.Recorder?.Heard(heard.At, speech.Samples);
            }

            Step(heard);
        }
        else
        {
            DroppedSpeech += speech.Heard is null ? 0 : 1;
            WatchQuiet();
        }
    }

    private void Played()
    {
        led = false;
        parts.Watcher.Saw(new SessionNote.Quiet(Now));
        Step(new DialogueEvent.Played(Now));
    }

    private void Step(DialogueEvent happened)
    {
        answers.Enqueue(happened);
        AnswerAll();
    }

    private void AnswerAll()
    {
        while (answers.TryDequeue(out DialogueEvent? next))
        {
            DialogueStep step = parts.Machine.Step(state!, next);
            kept.Keep(state!, next, step, Now);
            Carry(step);

            // An accepted utterance keeps the session open; so does unlocking. What was put off is put off by the same time.
            if (next is DialogueEvent.Unlocked or DialogueEvent.LockDue || (next is DialogueEvent.Utterance && step.Effects.Count > 0))
            {
                locks.Watch(state!);
            }
        }
    }

    private void Carry(DialogueStep step)
    {
        state = step.State;
        foreach (Effect effect in step.Effects)
        {
            Carry(effect);
        }

        // Where nothing could be played, all has been played at once.
        if (step.Effects.Any(e => e is Effect.Say or Effect.Play) && !mouth.IsBusy)
        {
            answers.Enqueue(new DialogueEvent.Played(Now));
        }

        string[] said = [.. step.Effects.OfType<Effect.Say>().Select(e => parts.Wording(e.Text))];
        asked = said.Length > 0 ? string.Join(' ', said) : asked;
        SayOfHardware();
        WatchQuiet();
    }

    private void Carry(Effect effect)
    {
        switch (effect)
        {
            case Effect.Silence:
                mouth.Silence();
                break;
            case Effect.Say say:
                Say(parts.Wording(say.Text));
                break;
            case Effect.Play play:
                parts.Watcher.Saw(new SessionNote.Sounded(Now, play.Tone));
                mouth.Play(play.Tone);
                break;
            case Effect.Show show:
                parts.Watcher.Saw(new SessionNote.Shown(Now, show.Screen));
                break;
            case Effect.Record record:
                var (note, answer) = pen.Write(record, Now);
                parts.Watcher.Saw(note);
                answers.Enqueue(answer);
                unreadable.Tell(Now, (note as SessionNote.Kept)?.Unreadable ?? []);
                if (note is SessionNote.Kept kept && parts.Recorder?.Saved(kept.Events) is { } unkept)
                {
                    parts.Watcher.Saw(new SessionNote.NotKept(Now, unkept));
                }

                break;
            case Effect.Unlock unlock:
                answers.Enqueue(locks.Spoken(unlock.Digits, Now));
                break;
            case Effect.StartTimer timer:
                timers.Start(timer.Name, timer.After);
                parts.Watcher.Saw(new SessionNote.Clock(Now, timer.Name, Now + timer.After));
                break;
            case Effect.StopTimer timer:
                timers.Stop(timer.Name);
                parts.Watcher.Saw(new SessionNote.Clock(Now, timer.Name, null));
                break;
            case Effect.End:
                over = true;
                break;
            case Effect.Listen listen:
                Listen(listen.For);
                break;
        }
    }

    private void Say(string text) => parts.Watcher.Saw(new SessionNote.Said(Now, text, mouth.Say(text)));

    private void Listen(Listening to)
    {
        listening = new ListeningInForce(listening.Number + 1, to, Now);
        ear.Listen(listening);
        parts.Watcher.Saw(new SessionNote.Listens(listening.Since, to));
    }

    private void WatchQuiet()
    {
        bool leads = listening.For.Kind == ListeningKind.Readings && !listening.For.AnswerAwaited && !led;
        bool canAnswer = listening.For.AnswerAwaited && hardware.CanHear;
        if (mouth.IsBusy || speaking || over || hardware.MicrophoneLost || !(canAnswer || leads))
        {
            quiet.Stop();
            return;
        }

        quiet.Begin(listening.For.AnswerAwaited ? parts.Settings.AnswerQuiet : parts.Settings.LeadQuiet);
    }
}
