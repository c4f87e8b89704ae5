using HandsFree.Audio.Devices;

namespace HandsFree.App.Session;

/// <summary>What goes and comes: microphone and loudspeaker. A loss is said aloud, the state is kept, and after the return the same
/// question is asked again. Nothing is said while a count runs: breaths are counted in silence. Used by the session loop alone.</summary>
internal sealed class Hardware(bool hasMicrophone, TalkSwitch talk)
{
    private string? toSay;

    /// <summary>Whether the microphone is gone.</summary>
    public bool MicrophoneLost { get; private set; }

    /// <summary>Whether an answer can come by voice.</summary>
    public bool CanHear => State == MicrophoneState.Open;

    /// <summary>How the microphone stands.</summary>
    public MicrophoneState State => !hasMicrophone ? MicrophoneState.None
        : MicrophoneLost ? MicrophoneState.Lost
        : talk.IsClosed ? MicrophoneState.Closed
        : MicrophoneState.Open;

    /// <summary>Something changed.</summary>
    /// <param name="changed">What.</param>
    /// <param name="question">The question that stands, or null.</param>
    public void Take(SessionEvent.DeviceChanged changed, string? question)
    {
        bool works = changed.WhyNot is null;
        if (changed.Which == SoundFlow.Capture)
        {
            MicrophoneLost = !works;
            toSay = works ? $"The microphone is back. {question}".TrimEnd() : "The microphone is gone. Plug it in again, or use the keys.";
        }
        else if (works)
        {
            toSay = $"The earpiece is back. {question}".TrimEnd();
        }
    }

    /// <summary>What is to be said now; null where nothing is, or not while a count runs.</summary>
    public string? Say(bool counting)
    {
        if (counting)
        {
            return null;
        }

        (string? now, toSay) = (toSay, null);
        return now;
    }
}
