using HandsFree.App.Homes;
using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;

namespace HandsFree.App.Screens;

/// <summary>The view model of a round: takes the session's notes, and says what can be seen at a moment. While the session is locked
/// that is nothing of a resident. May be used from any thread.</summary>
/// <param name="home">Residents and what is due.</param>
/// <param name="past">What the journal holds, oldest first.</param>
internal sealed class RoundBoard(Home home, IEnumerable<JournalEvent> past) : ISessionWatcher
{
    /// <summary>So long a value is seen; then room and bed only (safety 8).</summary>
    public static readonly TimeSpan Shown = TimeSpan.FromSeconds(5);

    /// <summary>What the dialogue's screen awaits while the session is locked begins so.</summary>
    private const string Locked = "locked";

    private readonly Lock gate = new();
    private readonly RoundClocks clocks = new();
    private readonly List<JournalEvent> journal = [.. past];
    private ScreenView screen = new("", "", "", "");
    private Listening listening = new(ListeningKind.Nothing, AnswerAwaited: false);
    private MicrophoneState microphone = MicrophoneState.Open;
    private string unheard = "";
    private string device = "";
    private string earpiece = "";
    private string record = "";
    private string notRead = "";
    private DateTimeOffset since;
    private bool speaking;
    private bool locked;

    /// <summary>Whether nobody can be heard.</summary>
    public bool KeysOnly
    {
        get
        {
            lock (gate)
            {
                return microphone == MicrophoneState.None;
            }
        }
    }

    /// <inheritdoc/>
    public void Saw(SessionNote note)
    {
        lock (gate)
        {
            Take(note);
        }
    }

    /// <summary>What can be seen now.</summary>
    public RoundView At(DateTimeOffset now)
    {
        lock (gate)
        {
            string warning = new[] { record, device, earpiece, notRead }.FirstOrDefault(w => w.Length > 0) ?? "";
            (string mark, string words) = MicrophoneWords.Of(microphone, speaking);
            RoundView always = new() { Mark = mark, Microphone = words, Warning = warning };
            if (locked)
            {
                return always with { IsLocked = true, Awaited = screen.Awaited };
            }

            bool fresh = now - since < Shown;
            return always with
            {
                Place = screen.Place,
                What = fresh ? screen.What : "",
                Digits = fresh ? screen.Digits : "",
                Awaited = fresh ? screen.Awaited : AwaitedWords.Of(listening),
                Text = fresh ? unheard : "",
                Clock = clocks.At(now),
                AnswerAwaited = listening.AnswerAwaited,
                Next = RoundLists.Next(home, journal, screen.Place, now),
            };
        }
    }

    /// <summary>The residents of whom something is due, one line each.</summary>
    public IReadOnlyList<string> Due(DateTimeOffset now)
    {
        lock (gate)
        {
            return locked ? [] : RoundLists.Due(home, journal, now);
        }
    }

    /// <summary>The open reports, one line each.</summary>
    public IReadOnlyList<string> Reports()
    {
        lock (gate)
        {
            return locked ? [] : RoundLists.Reports(home, journal);
        }
    }

    private void Take(SessionNote note)
    {
        clocks.Take(note);
        switch (note)
        {
            case SessionNote.Shown s:
                (screen, since) = (s.Screen, s.At);
                locked = s.Screen.Awaited.StartsWith(Locked, StringComparison.Ordinal);
                break;
            case SessionNote.Listens s:
                listening = s.For;
                break;
            case SessionNote.Said s:
                (unheard, since, speaking) = (s.WhyUnheard is null ? "" : s.Text, s.At, s.WhyUnheard is null);
                break;
            case SessionNote.Sounded:
                speaking = earpiece.Length == 0;
                break;
            case SessionNote.Quiet:
                speaking = false;
                break;
            case SessionNote.Microphone s:
                (microphone, device) = (s.State, s.Why ?? "");
                break;
            case SessionNote.Loudspeaker s:
                earpiece = s.WhySilent ?? "";
                speaking = speaking && s.WhySilent is null;
                break;
            case SessionNote.Kept s:
                journal.AddRange(s.Others);
                journal.AddRange(s.Events);
                record = "";
                break;
            case SessionNote.NotRead s:
                notRead = $"{s.Lines[^1]}; tell your supervisor.";
                break;
            case SessionNote.NotKept:
                record = "NOT SAVED: the record does not work. Write it on paper and tell your supervisor.";
                break;
        }
    }
}
