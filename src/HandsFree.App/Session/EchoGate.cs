namespace HandsFree.App.Session;

/// <summary>Knows when the program itself could be heard: from the start of a playback to its end, the device's latency and a tail.
/// Frames of that time are not listened to; the microphone itself is never switched off. May be used from any thread.</summary>
/// <param name="latency">The loudspeaker's, asked at the end of each playback.</param>
/// <param name="tail">The room's and the device's rest.</param>
internal sealed class EchoGate(Func<TimeSpan> latency, TimeSpan tail)
{
    private const int Remembered = 16;

    private readonly Lock gate = new();
    private readonly Queue<(DateTimeOffset From, DateTimeOffset To)> past = [];
    private DateTimeOffset? playingSince;

    /// <summary>A playback begins.</summary>
    public void Start(DateTimeOffset at)
    {
        lock (gate)
        {
            playingSince ??= at;
        }
    }

    /// <summary>It ends.</summary>
    public void End(DateTimeOffset at)
    {
        TimeSpan heldBack = latency();
        lock (gate)
        {
            if (playingSince is not { } from)
            {
                return;
            }

            playingSince = null;
            past.Enqueue((from, at + heldBack + tail));
            if (past.Count > Remembered)
            {
                past.Dequeue();
            }
        }
    }

    /// <summary>Whether the program could be heard at any time from a moment to another.</summary>
    public bool Covers(DateTimeOffset from, DateTimeOffset to)
    {
        lock (gate)
        {
            return playingSince < to || past.Any(p => p.From < to && p.To > from);
        }
    }
}
