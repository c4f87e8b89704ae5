using HandsFree.App.Demo.Script;
using HandsFree.App.Session;
using HandsFree.Audio;
using HandsFree.Audio.Endpointing;

namespace HandsFree.App.Demo.Room;

/// <summary>The made-up room with its microphone: the aide's voice, a little of the program's own from the earpiece, quiet. Its time
/// passes by the frame, once all that happened has been handled; where everybody only waits, it is moved on.</summary>
internal sealed class DemoRoom(
    Aide aide, AideEars ears, ClipShelf clips, DemoSpeaker speaker, DemoClock clock, Pace pace, IRoomWatcher watcher) : IMicrophone
{
    /// <summary>Of the program's voice so much reaches the microphone, as an amplitude.</summary>
    private const float Leak = 0.05f;

    private static readonly TimeSpan Frame = SampleTime.Of(ISpeechDetector.FrameSamples);
    private static readonly TimeSpan Reaction = TimeSpan.FromMilliseconds(600);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);
    private static readonly TimeSpan Stride = TimeSpan.FromMilliseconds(500);
    private static readonly TimeSpan Short = TimeSpan.FromSeconds(4);
    private static readonly TimeSpan LongestWait = TimeSpan.FromMinutes(15);

    private readonly float[] frame = new float[ISpeechDetector.FrameSamples];
    private readonly float[] played = new float[ISpeechDetector.FrameSamples];
    private readonly float[] spoken = new float[ISpeechDetector.FrameSamples];
    private ReadOnlyMemory<float> clip;
    private DateTimeOffset lastSound = clock.GetLocalNow();

    /// <summary>The queue of the session; the room's time stands while something in it waits.</summary>
    public EventQueue? Session { get; set; }

    /// <inheritdoc/>
    public MicrophoneFrame? Read(CancellationToken stop)
    {
        Session?.WaitUntilIdle(stop);
        stop.ThrowIfCancellationRequested();
        return clip.IsEmpty && !speaker.IsPlaying && !Turn(stop) ? null : Next(stop);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // Holds no device.
    }

    /// <summary>The aide's turn, where it is hers.</summary>
    /// <returns>False where she leaves.</returns>
    private bool Turn(CancellationToken stop)
    {
        DateTimeOffset began = clock.GetLocalNow();
        while (!speaker.IsPlaying)
        {
            TimeSpan quiet = clock.GetLocalNow() - lastSound;
            if (quiet < Reaction || (quiet < Patience && !ears.Answered))
            {
                return true;
            }

            (string prompt, var listening) = ears.Now();
            switch (aide.Next(prompt, listening))
            {
                case AideMove.Speak speak:
                    ears.Forget();
                    clip = clips.Samples(speak.Clip);
                    watcher.Speaks(clock.GetLocalNow(), speak.Clip);
                    return true;
                case AideMove.Leave:
                    return false;
                default:
                    if (quiet < Patience)
                    {
                        return true;
                    }

                    MoveOn(clock.GetLocalNow() - began, stop);
                    break;
            }

            if (clock.GetLocalNow() - began > LongestWait)
            {
                return false;
            }
        }

        return true;
    }

    private void MoveOn(TimeSpan already, CancellationToken stop)
    {
        if (already == Short)
        {
            watcher.MovesOn(clock.GetLocalNow());
        }

        clock.Advance(Stride);
        pace.Pass(Stride / 50, stop);
        Session?.WaitUntilIdle(stop);
    }

    private MicrophoneFrame Next(CancellationToken stop)
    {
        DateTimeOffset at = clock.GetLocalNow();
        int length = Math.Min(clip.Length, spoken.Length);
        spoken.AsSpan().Clear();
        clip.Span[..length].CopyTo(spoken);
        clip = clip[length..];
        speaker.Fill(played);
        for (int i = 0; i < frame.Length; i++)
        {
            frame[i] = spoken[i] + (Leak * played[i]);
        }

        bool sounds = length > 0 || speaker.IsPlaying;
        watcher.Passed(spoken, played);
        clock.Advance(Frame);
        lastSound = sounds ? clock.GetLocalNow() : lastSound;
        speaker.EndIfPlayed();
        pace.Pass(Frame, stop);
        return new MicrophoneFrame(at, frame);
    }
}
