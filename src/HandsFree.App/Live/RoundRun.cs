using HandsFree.App.Demo;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.App.Recordings;
using HandsFree.App.Screens;
using HandsFree.App.Session;
using HandsFree.App.Unlocking;
using HandsFree.Audio.Endpointing;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Dialogue.Recovery;
using HandsFree.Core.Journal;
using HandsFree.Speech;
using HandsFree.Speech.Voice;

namespace HandsFree.App.Live;

/// <summary>One live round: the session on a thread of its own, the screen on the caller's.</summary>
internal sealed class RoundRun
{
    public required Home Home { get; init; }

    public required HomeJournal Journal { get; init; }

    /// <summary>What the round must know of the past.</summary>
    public required IReadOnlyList<JournalEvent> Past { get; init; }

    public required IRecognizer Recognizer { get; init; }

    public required ISpeechDetector Detector { get; init; }

    /// <summary>Null where this machine has none.</summary>
    public required IVoice? Voice { get; init; }

    public required ListeningGrammars Grammars { get; init; }

    public required LiveSound Sound { get; init; }

    public required IRoundScreen Screen { get; init; }

    public required ISessionWatcher Log { get; init; }

    public required TimeProvider Time { get; init; }

    /// <summary>The id of who goes round.</summary>
    public required string Aide { get; init; }

    public bool PressToTalk { get; init; }

    /// <summary>Runs the round.</summary>
    /// <param name="stop">Ends it from outside.</param>
    /// <returns>How it ended; null where it was ended from outside.</returns>
    public SessionEnd? Run(CancellationTokenSource stop)
    {
        using CancellationTokenSource over = new();
        RoundMemory memory = new(Journal.ShiftKeys, Home.Settings.Clock, Home.Settings.WordsReadable);
        CutRound? cut = CutRounds.Find(Journal.Events, Past, Aide, memory, out bool isLost);
        string name = cut is null ? EventIds.Begin("round", Time.GetUtcNow()) : CutRound.SessionOf(cut.Started.Id);
        using FileStream? running = RunningRound.Take(Home.Folder.RunningFile(name));
        if (running is null)
        {
            // It runs: in another window, or on another screen. This is a round of its own.
            (cut, name) = (null, EventIds.Begin("round", Time.GetUtcNow()));
        }

        using SessionLoop loop = new(Parts() with { Memory = memory, Cut = cut, CutIsLost = isLost, Machine = Machine(cut) });
        SessionEnd? end = null;
        Exception? failure = null;
        Thread session = new(() =>
        {
            try
            {
                end = loop.Run(Aide, name, stop.Token);
            }
            catch (OperationCanceledException) when (stop.IsCancellationRequested)
            {
                end = null;
            }
#pragma warning disable CA1031 // Whatever broke the session is thrown again once the screen is restored.
            catch (Exception broken)
#pragma warning restore CA1031
            {
                failure = broken;
            }
            finally
            {
                over.Cancel();
            }
        }) { Name = "session" };
        Keys keys = new(loop, stop);
        Sound.Start(loop);
        session.Start();
        try
        {
            Screen.Run(keys, over.Token);
        }
        finally
        {
            keys.Close();
            if (!over.IsCancellationRequested)
            {
                stop.Cancel();
            }

            session.Join();
        }

        return failure is null ? end : throw new InvalidOperationException("the session ended by an error", failure);
    }

    // A round that goes on covers the shift in which it began.
    private DialogueMachine Machine(CutRound? cut) => HomeSession.Machine(Home, Recognizer, Grammars, cut?.Started.At ?? Time.GetLocalNow());

    private SessionParts Parts() => new()
    {
        Machine = Machine(null),
        Journal = Journal.Events,
        Past = Past,
        NotRead = Journal.PassedOver.Lines,
        Microphone = Sound.Microphone,
        HasMicrophone = Sound.HasMicrophone,
        PressToTalk = PressToTalk,
        Loudspeaker = Sound.Loudspeaker,
        Voice = Voice,
        Detector = Detector,
        Recognizer = Recognizer,
        Grammars = Grammars,
        Time = Time,
        Key = HolderKey.Of(Journal),
        Recorder = SessionRecorder.For(Home, Journal),
        Watcher = new Watchers([Log, Screen], []),
        Wording = Home.Settings.Wording.Of,
        Settings = HomeSession.Settings(Home),
    };

    // Who types may do so until the very end, on a thread of its own.
    private sealed class Keys(SessionLoop loop, CancellationTokenSource stop) : IRoundKeys
    {
        private readonly Lock gate = new();
        private bool closed;

        public void Type(string text) => loop.Type(text);

        public void Talk() => loop.Talk();

        // What was typed before is done first.
        public void Leave()
        {
            loop.Queue.WaitUntilIdle(CancellationToken.None);
            lock (gate)
            {
                if (!closed)
                {
                    stop.Cancel();
                }
            }
        }

        public void Close()
        {
            lock (gate)
            {
                closed = true;
            }
        }
    }
}
