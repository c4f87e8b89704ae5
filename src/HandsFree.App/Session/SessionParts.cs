using HandsFree.Audio.Endpointing;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Dialogue.Recovery;
using HandsFree.Core.Journal;
using HandsFree.Speech;
using HandsFree.Speech.Voice;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Session;

/// <summary>What a session is made of. Whoever made the parts disposes of them.</summary>
internal sealed record SessionParts
{
    public required DialogueMachine Machine { get; init; }

    public required EventJournal<JournalEvent> Journal { get; init; }

    /// <summary>What the dialogue must know of the past; all events of the journal where null.</summary>
    public IEnumerable<JournalEvent>? Past { get; init; }

    /// <summary>A line for each event of the past that can't be read and was passed over.</summary>
    public IReadOnlyList<string> NotRead { get; init; } = [];

    /// <summary>Keeps what the round is told, so that it can go on after a cut; null where nothing is kept.</summary>
    public RoundMemory? Memory { get; init; }

    /// <summary>The round that was cut off and goes on; null for a new one.</summary>
    public CutRound? Cut { get; init; }

    /// <summary>A round was cut off that can't go on where it was.</summary>
    public bool CutIsLost { get; init; }

    public required IMicrophone Microphone { get; init; }

    /// <summary>Whether somebody can be heard at all; false where only the keys are used.</summary>
    public bool HasMicrophone { get; init; } = true;

    /// <summary>Whether the microphone is heard only after its key was pressed, for one utterance.</summary>
    public bool PressToTalk { get; init; }

    public required ILoudspeaker Loudspeaker { get; init; }

    /// <summary>Null where this machine has no voice: what is said is shown only.</summary>
    public required IVoice? Voice { get; init; }

    public required ISpeechDetector Detector { get; init; }

    public required IRecognizer Recognizer { get; init; }

    public required ListeningGrammars Grammars { get; init; }

    public required TimeProvider Time { get; init; }

    public required ISessionWatcher Watcher { get; init; }

    /// <summary>Unlocks the session; null where nobody is set up, and then it is never locked.</summary>
    public ISessionKey? Key { get; init; }

    /// <summary>Keeps the recordings of what is saved; null where the home keeps none.</summary>
    public ISessionRecorder? Recorder { get; init; }

    /// <summary>A text of the dialogue in the home's words.</summary>
    public Func<string, string> Wording { get; init; } = static text => text;

    public SessionSettings Settings { get; init; } = new();
}
