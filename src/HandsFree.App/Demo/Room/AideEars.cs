using HandsFree.App.Session;
using HandsFree.Core.Dialogue;

namespace HandsFree.App.Demo.Room;

/// <summary>What the aide hears of the program: the words since she last spoke, and what is awaited. Told on the session's thread,
/// asked on the room's.</summary>
internal sealed class AideEars : ISessionWatcher
{
    private readonly Lock gate = new();
    private readonly List<string> said = [];
    private Listening listening = new(ListeningKind.Nothing);
    private bool answered;

    /// <summary>Whether the program has answered since she last spoke, with words or a tone.</summary>
    public bool Answered
    {
        get
        {
            lock (gate)
            {
                return answered;
            }
        }
    }

    /// <summary>The words since she last spoke, and what is awaited now.</summary>
    public (string Prompt, Listening Listening) Now()
    {
        lock (gate)
        {
            return (string.Join(' ', said), listening);
        }
    }

    /// <summary>She speaks: what was said before is answered.</summary>
    public void Forget()
    {
        lock (gate)
        {
            said.Clear();
            answered = false;
        }
    }

    /// <inheritdoc/>
    public void Saw(SessionNote note)
    {
        lock (gate)
        {
            switch (note)
            {
                case SessionNote.Said s:
                    said.Add(s.Text);
                    answered = true;
                    break;
                case SessionNote.Sounded s:
                    said.AddRange(s.Tone == Core.Dialogue.Tone.Saved ? ["Saved."] : []);
                    answered = true;
                    break;
                case SessionNote.Listens l:
                    listening = l.For;
                    break;
            }
        }
    }
}
