using HandsFree.App.Composition;
using HandsFree.App.Demo.Room;
using HandsFree.App.Demo.Script;
using HandsFree.App.Homes;
using HandsFree.App.Recordings;
using HandsFree.App.Session;
using HandsFree.App.Unlocking;
using HandsFree.Audio.Endpointing;
using HandsFree.Speech;
using HandsFree.Speech.Voice;

namespace HandsFree.App.Demo;

/// <summary>One shift: the made-up room on one side, the session on the other, the same session that a microphone would feed.</summary>
internal sealed class DemoRun
{
    public required DemoManifest Manifest { get; init; }

    public required ClipShelf Clips { get; init; }

    public required Home Home { get; init; }

    public required HomeJournal Journal { get; init; }

    public required IRecognizer Recognizer { get; init; }

    public required ISpeechDetector Detector { get; init; }

    /// <summary>Null where this machine has none.</summary>
    public required IVoice? Voice { get; init; }

    public required ListeningGrammars Grammars { get; init; }

    public required DemoTranscript Transcript { get; init; }

    /// <summary>Null where nothing is to be kept.</summary>
    public required DemoRecording? Recording { get; init; }

    public required TimeProvider RealTime { get; init; }

    /// <summary>Whether the room's time passes as fast as it can.</summary>
    public required bool Fast { get; init; }

    /// <summary>The log of the home that stays; null where none does.</summary>
    public required ProgramLog? Log { get; init; }

    /// <summary>Runs the shift.</summary>
    /// <param name="stop">Ends it from outside.</param>
    public SessionEnd Run(CancellationToken stop)
    {
        var clock = new DemoClock(RealTime.GetUtcNow(), Home.Settings.TimeZone);
        var ears = new AideEars();
        IRoomWatcher[] room = Recording is null ? [Transcript] : [Transcript, Recording];
        ISessionWatcher[] session = Log is null ? [Transcript, ears] : [new SessionLog(Log), Transcript, ears];
        var watchers = new Watchers(session, room);
        using var speaker = new DemoSpeaker(clock);
        var aide = new Aide(Manifest, Clips, new AideMind(Grammars), Home.Roster);
        using var microphone = new DemoRoom(aide, ears, Clips, speaker, clock, new Pace(RealTime, Fast), watchers);
        using var loop = new SessionLoop(new SessionParts
        {
            Machine = HomeSession.Machine(Home, Recognizer, Grammars, clock.GetLocalNow()),
            Journal = Journal.Events,
            Past = Journal.Present(),
            Microphone = microphone,
            Loudspeaker = speaker,
            Voice = Voice,
            Detector = Detector,
            Recognizer = Recognizer,
            Grammars = Grammars,
            Time = clock,
            Key = HolderKey.Of(Journal),
            Recorder = SessionRecorder.For(Home, Journal),
            Watcher = watchers,
            Wording = Home.Settings.Wording.Of,
            Settings = HomeSession.Settings(Home),
        });
        microphone.Session = loop.Queue;
        return loop.Run(Manifest.Aide, $"demo-{clock.GetLocalNow():yyyyMMdd-HHmmss}", stop);
    }
}
