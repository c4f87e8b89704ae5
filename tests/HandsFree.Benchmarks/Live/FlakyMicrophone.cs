using HandsFree.App.Session;
using HandsFree.Audio.Devices;

namespace HandsFree.Benchmarks.Live;

/// <summary>A microphone that goes again and again, and comes back; what is spoken meanwhile is lost.</summary>
/// <param name="room">The microphone of the room.</param>
/// <param name="every">From one loss to the next.</param>
/// <param name="away">How long it is away.</param>
internal sealed class FlakyMicrophone(IMicrophone room, TimeSpan every, TimeSpan away) : IMicrophone
{
    private DateTimeOffset? next;

    /// <summary>The session that is told.</summary>
    public SessionLoop? Session { get; set; }

    /// <summary>Frames that reached the session.</summary>
    public long Frames { get; private set; }

    /// <summary>Frames that were lost with the device.</summary>
    public long Lost { get; private set; }

    /// <summary>How often it went.</summary>
    public int Losses { get; private set; }

    /// <inheritdoc/>
    public MicrophoneFrame? Read(CancellationToken stop)
    {
        MicrophoneFrame? frame = room.Read(stop);
        next ??= frame?.At + every;
        if (frame?.At >= next)
        {
            frame = Lose(frame, stop);
            next += every;
        }

        Frames += frame is null ? 0 : 1;
        return frame;
    }

    /// <inheritdoc/>
    public void Dispose() => room.Dispose();

    private MicrophoneFrame? Lose(MicrophoneFrame? frame, CancellationToken stop)
    {
        Losses++;
        Session!.DeviceChanged(SoundFlow.Capture, "gone");
        DateTimeOffset? back = frame?.At + away;
        while (frame is not null && frame.Value.At < back)
        {
            Lost++;
            frame = room.Read(stop);
        }

        Session.DeviceChanged(SoundFlow.Capture, null);
        return frame;
    }
}
