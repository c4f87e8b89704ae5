using HandsFree.App.Demo.Room;
using HandsFree.App.Session;
using HandsFree.Audio;
using HandsFree.Audio.Endpointing;
using HandsFree.Benchmarks.Dictations.Sound;

namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>The room with its microphone. Its time passes by the frame, once all that happened has been handled; where everybody only
/// waits, it is moved on.</summary>
internal sealed class AideRoom(SimulatedAide aide, AideEars ears, Acoustics acoustics, DemoSpeaker speaker, DemoClock clock, SessionScribe scribe) : IMicrophone
{
    private static readonly TimeSpan Frame = SampleTime.Of(ISpeechDetector.FrameSamples);
    private static readonly TimeSpan Reaction = TimeSpan.FromMilliseconds(600);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);
    private static readonly TimeSpan Stride = TimeSpan.FromMilliseconds(500);
    private static readonly TimeSpan LongestWait = TimeSpan.FromMinutes(8);

    private readonly float[] frame = new float[ISpeechDetector.FrameSamples];
    private readonly float[] played = new float[ISpeechDetector.FrameSamples];
    private ReadOnlyMemory<float> sound;
    private DateTimeOffset lastSound = clock.GetLocalNow();

    /// <summary>The queue of the session; the room's time stands while something in it waits.</summary>
    public EventQueue? Session { get; set; }

    /// <inheritdoc/>
    public MicrophoneFrame? Read(CancellationToken stop)
    {
        Session!.WaitUntilIdle(stop);
        stop.ThrowIfCancellationRequested();
        return sound.IsEmpty && !speaker.IsPlaying && !Turn(stop) ? null : Next();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // Holds no device.
    }

    // The aide's turn, where it is hers; false where she leaves.
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

            switch (aide.Next(ears.Take()))
            {
                case AideMove.Sound move:
                    ears.Forget();
                    sound = acoustics.Sound(move.Utterance);
                    scribe.Speaks(clock.GetLocalNow(), move.Utterance, SampleTime.Of(sound.Length));
                    return true;
                case AideMove.Types move:
                    ears.Forget();
                    scribe.Types(clock.GetLocalNow(), move.Text);
                    Session!.Post(new SessionEvent.Typed(move.Text));
                    Session.WaitUntilIdle(stop);
                    lastSound = clock.GetLocalNow();
                    return true;
                case AideMove.Leave:
                    return false;
            }

            if (quiet < Patience)
            {
                return true;
            }

            clock.Advance(Stride);
            Session!.WaitUntilIdle(stop);
            if (clock.GetLocalNow() - began > LongestWait)
            {
                return false;
            }
        }

        return true;
    }

    private MicrophoneFrame Next()
    {
        DateTimeOffset at = clock.GetLocalNow();
        int length = Math.Min(sound.Length, frame.Length);
        frame.AsSpan().Clear();
        sound.Span[..length].CopyTo(frame);
        sound = sound[length..];
        bool speaks = speaker.IsPlaying;
        speaker.Fill(played);
        clock.Advance(Frame);
        scribe.Passed(speaks ? Frame : TimeSpan.Zero);
        lastSound = length > 0 || speaks ? clock.GetLocalNow() : lastSound;
        speaker.EndIfPlayed();
        return new MicrophoneFrame(at, frame);
    }
}
