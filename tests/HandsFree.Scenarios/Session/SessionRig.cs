using HandsFree.App.Demo;
using HandsFree.App.Demo.Room;
using HandsFree.App.Hear;
using HandsFree.App.Homes;
using HandsFree.App.Session;
using HandsFree.App.Unlocking;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Dialogue.Recovery;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Scenarios.CommandLine;
using HandsFree.Speech;
using HandsFree.Speech.Scripted;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using HandsFree.TestKit;

namespace HandsFree.Scenarios.Session;

/// <summary>A session with simulated time: a room in which loud sound is speech, an engine that hears what it is told, a journal on
/// the disk.</summary>
internal sealed class SessionRig : IDisposable
{
    private readonly TemporaryHome home = new();
    private readonly List<RoomAction> actions = [];
    private readonly DemoSpeaker speaker;
    private readonly IJournal bytes;
    private readonly HomeJournal? held;
    private ShiftKeys? keys;

    /// <summary>A rig.</summary>
    /// <param name="journal">How the journal is opened.</param>
    /// <param name="withPerson">An aide with a PIN (<see cref="DemoPerson.Passphrase"/>) has opened it.</param>
    public SessionRig(JournalOptions? journal = null, bool withPerson = false)
    {
        Clock = new DemoClock(CommandRun.Now, TimeZoneInfo.Utc);
        speaker = new DemoSpeaker(Clock);
        held = withPerson ? DemoPerson.SetUp(home.Folder, "aide", CommandRun.Quiet with { Time = Clock }).Journal : null;
        bytes = held is not null ? Journal.Open(home.Folder.JournalFile, new JournalAccess(home.States, DemoPerson.CredentialOf("aide"), Clock)).Journal! : Journal.Open(home.Folder.JournalFile, new JournalAccess(home.States, new Credential.Device(), TimeProvider.System), journal).Journal!;
        Grammars = new ListeningGrammars(new GrammarShelf(Path.Combine(Shared.Repository, "grammars")));
    }

    public DemoClock Clock { get; }

    public ListeningGrammars Grammars { get; }

    /// <summary>Whether what a session is told is kept, and the next one goes on with it.</summary>
    public bool Remembers { get; init; }

    /// <summary>The keys of the shifts.</summary>
    public ShiftKeys Keys => keys ??= ((Journal)bytes).ShiftKeys(home.Folder.ShiftKeysFolder);

    /// <summary>Opens what a session was told, until a day after its shift.</summary>
    public RoundMemory Memory => new(Keys, new DialogueSettings().Shifts, TimeSpan.FromDays(1));

    /// <summary>What the home decides about the dialogue.</summary>
    public DialogueSettings Dialogue { get; set; } = new();

    /// <summary>All that the session showed.</summary>
    public List<SessionNote> Notes { get; } = [];

    /// <summary>What is typed at the beginning.</summary>
    public IReadOnlyList<string> Typed { get; init; } = [];

    /// <summary>Whether the microphone has a key.</summary>
    public bool PressToTalk { get; init; }

    /// <summary>What else happens, so long after the beginning.</summary>
    public IReadOnlyList<(TimeSpan After, Action<SessionLoop> What)> Happenings { get; init; } = [];

    /// <summary>The journal with a person's PIN; null where nobody is set up.</summary>
    public HomeJournal? Held => held;

    /// <summary>What is typed when a note is seen; null for nothing.</summary>
    public Func<SessionNote, string?> TypesAt { get; init; } = static _ => null;

    /// <summary>Whether her digits unlock too.</summary>
    public bool SpokenUnlock { get; init; }

    /// <summary>The session's times.</summary>
    public SessionSettings Settings { get; init; } = new();

    /// <summary>Keeps the sound of what is saved.</summary>
    public ISessionRecorder? Recorder { get; init; }

    /// <summary>How much of the program's voice reaches the microphone, as an amplitude.</summary>
    public float Leak { get; init; }

    /// <summary>What the journal makes of a reading's bytes, for a disk that is full.</summary>
    public Func<JournalEvent, byte[]> Encode { get; init; } = JournalEventCodec.Encode;

    /// <summary>The residents.</summary>
    public Roster Roster { get; init; } = new([new Resident { Id = "r1", Name = "Ann Example", Room = 12, Bed = "b", Born = new DateOnly(1938, 3, 4) }]);

    /// <summary>The engine that hears, where it is a real one; it hears what <see cref="Sounds"/> plays.</summary>
    public IRecognizer? Real { get; init; }

    /// <summary>The engine that was told what it hears, after a run.</summary>
    public ScriptedRecognizer? Engine { get; private set; }

    /// <summary>What the program said, in order.</summary>
    public IEnumerable<string> Said => Notes.Select(n => n switch
    {
        SessionNote.Said said => said.Text,
        SessionNote.Sounded { Tone: Core.Dialogue.Tone.Saved or Core.Dialogue.Tone.Ready } tone => $"{tone.Tone}.",
        _ => null,
    }).OfType<string>();

    /// <summary>The events in the journal, from the disk.</summary>
    public IReadOnlyList<JournalEvent> Events => 
        [.. new EventJournal<JournalEvent>(bytes, e => Encode(e), HomeJournal.Decoded).TryReadFrom(1).Select(e => e.Event).OfType<JournalEvent>()];

    /// <summary>The readings in the journal, from the disk.</summary>
    public IReadOnlyList<ReadingRecorded> Readings => [.. Events.OfType<ReadingRecorded>()];

    /// <summary>Another program appends these bytes to the journal.</summary>
    public void Appended(byte[] body) => bytes.Append(body);

    /// <summary>Somebody says this next, in a state that listens for the grammar.</summary>
    public SessionRig Says(Listening listening, string text)
    {
        actions.Add(new RoomAction(TimeSpan.Zero, RoomAction.Buzz, null));
        hearings.Add(Heard.In(Grammars.For(listening)!, text));
        return this;
    }

    /// <summary>The same from further away: 20 dB below.</summary>
    public SessionRig SaysQuietly(Listening listening, string text)
    {
        Says(listening, text);
        actions[^1] = actions[^1] with { Sound = [.. RoomAction.Buzz.Select(s => s * 0.15f)] };
        return this;
    }

    /// <summary>Somebody types these next, each when the program has been silent for a moment.</summary>
    public SessionRig Types(params string[] lines)
    {
        actions.AddRange(lines.Select(line => new RoomAction(TimeSpan.Zero, null, line)));
        return this;
    }

    /// <summary>Somebody types this so long after what happened before.</summary>
    public SessionRig TypesAfter(TimeSpan since, string line)
    {
        actions.Add(new RoomAction(since, null, line));
        return this;
    }

    /// <summary>The room hears these next, for a real engine.</summary>
    public SessionRig Sounds(params float[][] sounds)
    {
        actions.AddRange(sounds.Select(sound => new RoomAction(TimeSpan.Zero, sound, null)));
        return this;
    }

    /// <summary>Runs a session until nothing happens any more. What comes after it is another session on the same journal.</summary>
    public SessionEnd Run(TimeSpan? quietAtTheEnd = null, string aide = "aide")
    {
        using ScriptedRecognizer engine = new(hearings);
        NoteTaker notes = new(Notes, TypesAt);
        Engine = engine;
        using TalkingRoom room = new(Clock, speaker, actions, quietAtTheEnd ?? TimeSpan.FromSeconds(3)) { Leak = Leak };
        using LoudIsSpeech detector = new();
        bool isLost = false;
        CutRound? cut = Remembers
            ? CutRounds.Find(new EventJournal<JournalEvent>(bytes, e => Encode(e), HomeJournal.Decoded), [.. Events.Where(e => e is not DialogueTold)], aide, Memory, out isLost)
            : null;
        using SessionLoop loop = new(new SessionParts
        {
            Memory = Remembers ? Memory : null,
            Cut = cut,
            CutIsLost = isLost,
            Machine = new DialogueMachine(Rulebook.Load().Rulebook!, Roster, Dialogue with { SamplePhrases = Grammars.Examples, UnlocksBySpokenDigits = SpokenUnlock }),
            Journal = new EventJournal<JournalEvent>(bytes, e => Encode(e), HomeJournal.Decoded),
            Microphone = room,
            PressToTalk = PressToTalk,
            Loudspeaker = speaker,
            Voice = new BuzzingVoice(),
            Detector = detector,
            Recognizer = Real ?? engine,
            Grammars = Grammars,
            Time = Clock,
            Key = held is null ? null : HolderKey.Of(held),
            Recorder = Recorder,
            Settings = Settings,
            Watcher = notes,
        });
        notes.Type = loop.Type;
        room.Session = loop;
        using DisposableList timers = new(Happenings.Select(h => Clock.CreateTimer(_ => h.What(loop), null, h.After, Timeout.InfiniteTimeSpan)));
        foreach (string text in Typed)
        {
            loop.Type(text);
        }

        sessions++;
        SessionEnd end = loop.Run(aide, $"s{sessions}", CancellationToken.None);
        actions.Clear();
        hearings.Clear();
        return end;
    }

    private readonly List<HandsFree.Speech.Hearing> hearings = [];
    private int sessions;

    public void Dispose()
    {
        bytes.Dispose();
        held?.Dispose();
        speaker.Dispose();
        home.Dispose();
    }

    private sealed class DisposableList(IEnumerable<IDisposable> items) : IDisposable
    {
        private readonly IDisposable[] held = [.. items];

        public void Dispose() => Array.ForEach(held, h => h.Dispose());
    }

    private sealed class NoteTaker(List<SessionNote> notes, Func<SessionNote, string?> types) : ISessionWatcher
    {
        public Action<string>? Type { get; set; }

        public void Saw(SessionNote note)
        {
            notes.Add(note);
            if (types(note) is { } text)
            {
                Type!(text);
            }
        }
    }
}
