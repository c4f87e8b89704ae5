using HandsFree.App.Demo.Room;
using HandsFree.App.Session;

namespace HandsFree.Scenarios.Session;

/// <summary>A microphone in a room of simulated time. Whenever the room has been quiet for long enough, the next thing happens in it.</summary>
internal sealed class TalkingRoom(DemoClock clock, DemoSpeaker speaker, IEnumerable<RoomAction> actions, TimeSpan quietAtTheEnd) : IMicrophone
{
    private const int FrameSamples = 320;
    private static readonly TimeSpan Frame = TimeSpan.FromMilliseconds(20);

    private readonly float[] frame = new float[FrameSamples];
    private readonly Queue<RoomAction> coming = new(actions);
    private float[] sound = [];
    private int played;
    private TimeSpan quiet;
    private TimeSpan since;

    public SessionLoop? Session { get; set; }

    public float Leak { get; init; }

    public MicrophoneFrame? Read(CancellationToken stop)
    {
        Session!.Queue.WaitUntilIdle(stop);
        stop.ThrowIfCancellationRequested();
        Act();
        if (coming.Count == 0 && quiet >= quietAtTheEnd)
        {
            return null;
        }

        DateTimeOffset at = clock.GetLocalNow();
        bool speaks = played < sound.Length;
        speaker.Fill(frame);
        for (int i = 0; i < FrameSamples; i++)
        {
            frame[i] = (Leak * frame[i]) + (played + i < sound.Length ? sound[played + i] : 0);
        }

        played = Math.Min(sound.Length, played + FrameSamples);
        since += Frame;
        quiet = speaks || speaker.IsPlaying ? TimeSpan.Zero : quiet + Frame;
        clock.Advance(Frame);
        speaker.EndIfPlayed();
        return new MicrophoneFrame(at, frame);
    }

    public void Dispose()
    {
        // Holds no device.
    }

    private void Act()
    {
        if (coming.Count == 0 || played < sound.Length || quiet < RoomAction.Quiet || since < coming.Peek().After)
        {
            return;
        }

        RoomAction next = coming.Dequeue();
        (quiet, since) = (TimeSpan.Zero, TimeSpan.Zero);
        (sound, played) = (next.Sound ?? [], 0);
        if (next.Typed is { } words)
        {
            Session!.Type(words);
            Session.Queue.WaitUntilIdle(CancellationToken.None);
        }
    }
}
