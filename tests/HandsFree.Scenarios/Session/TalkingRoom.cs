using HandsFree.App.Demo.Room;
using HandsFree.App.Session;

namespace HandsFree.Scenarios.Session;

/// <summary>A microphone in a room of simulated time. Whenever the program has been silent for a second, somebody speaks for 600 ms,
/// a given number of times.</summary>
internal sealed class TalkingRoom(DemoClock clock, DemoSpeaker speaker, int speeches, TimeSpan quietAtTheEnd) : IMicrophone
{
    private const int FrameSamples = 320;
    private const int SpeechFrames = 30;
    private static readonly TimeSpan Frame = TimeSpan.FromMilliseconds(20);

    private readonly float[] frame = new float[FrameSamples];
    private int left = speeches;
    private int framesOfSpeech;
    private TimeSpan quiet;

    public EventQueue? Session { get; set; }

    public float Leak { get; init; }

    public MicrophoneFrame? Read(CancellationToken stop)
    {
        Session!.WaitUntilIdle(stop);
        stop.ThrowIfCancellationRequested();
        if (left > 0 && framesOfSpeech == 0 && quiet >= TimeSpan.FromSeconds(1.5))
        {
            left--;
            framesOfSpeech = SpeechFrames;
        }

        if (left == 0 && quiet >= quietAtTheEnd)
        {
            return null;
        }

        DateTimeOffset at = clock.GetLocalNow();
        bool speaks = framesOfSpeech > 0;
        framesOfSpeech -= speaks ? 1 : 0;
        speaker.Fill(frame);
        for (int i = 0; i < FrameSamples; i++)
        {
            frame[i] = (Leak * frame[i]) + (speaks ? (i % 80 < 40 ? 0.4f : -0.4f) : 0);
        }

        quiet = speaks || speaker.IsPlaying ? TimeSpan.Zero : quiet + Frame;
        clock.Advance(Frame);
        speaker.EndIfPlayed();
        return new MicrophoneFrame(at, frame);
    }

    public void Dispose()
    {
        // Holds no device.
    }
}
