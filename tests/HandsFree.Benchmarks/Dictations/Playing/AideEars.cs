using HandsFree.App.Session;

namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>What the aide hears of the program. Told on the session's thread, asked on the room's.</summary>
internal sealed class AideEars : ISessionWatcher
{
    private readonly Lock gate = new();
    private readonly List<string> said = [];
    private bool answered;

    /// <summary>Whether the program has answered since she was last heard, with words or a tone.</summary>
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

    /// <summary>The texts that she has not been told of; a tone is its name in brackets.</summary>
    public IReadOnlyList<string> Take()
    {
        lock (gate)
        {
            string[] texts = [.. said];
            said.Clear();
            return texts;
        }
    }

    /// <summary>She is heard: what comes now answers it.</summary>
    public void Forget()
    {
        lock (gate)
        {
            answered = false;
        }
    }

    /// <inheritdoc/>
    public void Saw(SessionNote note)
    {
        lock (gate)
        {
            string? heard = note switch
            {
                SessionNote.Said text => text.Text,
                SessionNote.Sounded tone => $"({tone.Tone})",
                _ => null,
            };
            if (heard is not null)
            {
                said.Add(heard);
                answered = true;
            }
        }
    }
}
