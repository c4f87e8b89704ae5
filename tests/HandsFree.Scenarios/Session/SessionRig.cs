using HandsFree.App.Demo;
using HandsFree.App.Demo.Room;
using HandsFree.App.Hear;
using HandsFree.App.Homes;
using HandsFree.App.Session;
using HandsFree.App.Unlocking;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Scenarios.CommandLine;
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
    private readonly List<string> texts = [];
    private readonly DemoSpeaker speaker;
    private readonly IJournal bytes;
    private readonly HomeJournal? held;

    /// <summary>A rig.</summary>
    /// <param name="journal">How the journal is opened.</param>
    /// <param name="withPerson">An aide with a PIN (<see cref="DemoPerson.Digits"/>) has opened it.</param>
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

    /// <summary>All that the session showed.</summary>
    public List<SessionNote> Notes { get; } = [];

    /// <summary>What is typed at the beginning.</summary>
    public IReadOnlyList<string> Typed { get; init; } = [];

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

    /// <summary>All events in the journal, from the disk.</summary>
    public IReadOnlyList<JournalEvent> Events => [.. bytes.ReadFrom(1).Select(e => JournalEventCodec.Decode(e.Body.Span))];

    /// <summary>How much of the program's voice reaches the microphone, as an amplitude.</summary>
    public float Leak { get; init; }

    /// <summary>What the journal makes of a reading's bytes, for a disk that is full.</summary>
    public Func<JournalEvent, byte[]> Encode { get; init; } = JournalEventCodec.Encode;

    /// <summary>The engine, after a run.</summary>
    public ScriptedRecognizer? Engine { get; private set; }

    /// <summary>What the program said, in order.</summary>
    public IEnumerable<string> Said => Notes.OfType<SessionNote.Said>().Select(n => n.Text);

    /// <summary>The readings in the journal, from the disk.</summary>
    public IReadOnlyList<ReadingRecorded> Readings => [.. bytes.ReadFrom(1)
        .Where(e => e.Body.Length < 100_000).Select(e => JournalEventCodec.Decode(e.Body.Span)).OfType<ReadingRecorded>()];

    /// <summary>Somebody says this next, in a state that listens for the grammar.</summary>
    public SessionRig Says(Listening listening, string text)
    {
        texts.Add(text);
        hearings.Add(Heard.In(Grammars.For(listening)!, text));
        return this;
    }

    /// <summary>Runs the session until nobody says anything any more.</summary>
    public SessionEnd Run(TimeSpan? quietAtTheEnd = null)
    {
        using ScriptedRecognizer engine = new(hearings);
        NoteTaker notes = new(Notes, TypesAt);
        Engine = engine;
        using TalkingRoom room = new(Clock, speaker, texts.Count, quietAtTheEnd ?? TimeSpan.FromSeconds(3)) { Leak = Leak };
        using LoudIsSpeech detector = new();
        var resident = new Resident { Id = "r1", Name = "Ann Example", Room = 12, Bed = "b", Born = new DateOnly(1938, 3, 4) };
        using SessionLoop loop = new(new SessionParts
        {
            Machine = new DialogueMachine(Rulebook.Load().Rulebook!, new Roster([resident]), new DialogueSettings { SamplePhrases = Grammars.Examples, UnlocksBySpokenDigits = SpokenUnlock }),
            Journal = new EventJournal<JournalEvent>(bytes, e => Encode(e), b => JournalEventCodec.Decode(b.Span)),
            Microphone = room,
            Loudspeaker = speaker,
            Voice = new BuzzingVoice(),
            Detector = detector,
            Recognizer = engine,
            Grammars = Grammars,
            Time = Clock,
            Key = held is null ? null : HolderKey.Of(held),
            Recorder = Recorder,
            Settings = Settings,
            Watcher = notes,
        });
        notes.Type = loop.Type;
        room.Session = loop.Queue;
        foreach (string text in Typed)
        {
            loop.Type(text);
        }

        return loop.Run("aide", "s1", CancellationToken.None);
    }

    private readonly List<HandsFree.Speech.Hearing> hearings = [];

    public void Dispose()
    {
        bytes.Dispose();
        held?.Dispose();
        speaker.Dispose();
        home.Dispose();
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
