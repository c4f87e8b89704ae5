using HandsFree.Audio.Devices;
using HandsFree.Core.Dialogue;

namespace HandsFree.App.Session;

/// <content>What the session does when a microphone or a loudspeaker goes or comes.</content>
internal sealed partial class SessionLoop
{
    private void Take(SessionEvent.DeviceChanged changed)
    {
        hardware.Take(changed, listening.For.AnswerAwaited ? asked : null);
        if (changed.Which == SoundFlow.Capture)
        {
            TellMicrophone(changed.WhyNot);
        }
        else
        {
            parts.Watcher.Saw(new SessionNote.Loudspeaker(Now, changed.WhyNot));
        }

        SayOfHardware();
        WatchQuiet();
    }

    private void TellMicrophone(string? why)
    {
        parts.Watcher.Saw(new SessionNote.Microphone(Now, hardware.State, why));
        WatchQuiet();
    }

    private void SayOfHardware()
    {
        if (hardware.Say(listening.For is { Kind: ListeningKind.Count, AnswerAwaited: false }) is { } text)
        {
            Say(text);
        }
    }
}
