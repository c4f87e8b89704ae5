using HandsFree.App.Session;
using HandsFree.Audio.Devices;

namespace HandsFree.App.Live;

/// <summary>A real microphone, read on a thread of its own into a bounded queue. Where it goes, the frames stop, whoever watches is told,
/// and it is looked for until it is back. The time since the last frame is watched from outside: a driver that neither brings sound nor
/// comes back is told too.</summary>
internal sealed class LiveMicrophone : IMicrophone
{
    /// <summary>What waits at most while somebody decodes: ten seconds. Older frames are dropped and counted.</summary>
    private static readonly int Waiting = (int)(TimeSpan.FromSeconds(10) / SoundFrame.Duration);

    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(100);

    /// <summary>Longer than a stream itself waits for a frame: what is told here, the stream did not notice.</summary>
    private static readonly TimeSpan Longest = Patience.Starting + TimeSpan.FromSeconds(1);

    /// <summary>A driver that does not come back is left behind after that.</summary>
    private static readonly TimeSpan Ending = Patience.Starting + TimeSpan.FromSeconds(1);

    private readonly FrameQueue queue = new(Waiting);
    private readonly float[] given = new float[SoundFrame.Samples];
    private readonly Returning<ICaptureStream> device;
    private readonly ManualResetEvent ending = new(false);
    private readonly Thread thread;
    private readonly Lock telling = new();
    private readonly TimeProvider time;
    private Action<string?> changed = static _ => { };
    private ITimer? watch;
    private string? told;
    private long frames;
    private long seen = -1;
    private long seenAt;
    private bool stuck;
    private int losses;

    private LiveMicrophone(ISoundSystem sound, ICaptureStream? stream, string name, TimeProvider time, TimeSpan retry)
    {
        (Device, this.time) = (name, time);
        device = new Returning<ICaptureStream>(stream, name, sound.OpenCapture, retry);
        thread = new Thread(Run) { IsBackground = true, Name = "microphone" };
    }

    /// <summary>Its name.</summary>
    public string Device { get; }

    /// <summary>Frames that came from the device.</summary>
    public long Frames => Interlocked.Read(ref frames);

    /// <summary>Frames that nobody took in time.</summary>
    public long Dropped => queue.Dropped;

    /// <summary>How often the device went.</summary>
    public int Losses => Volatile.Read(ref losses);

    /// <summary>Opens a microphone; <see cref="Start"/> starts it.</summary>
    /// <param name="sound">The machine's sound.</param>
    /// <param name="name">Its name, or null for the usual one.</param>
    /// <param name="time">The clock.</param>
    /// <param name="retry">Between two trials to find a lost one.</param>
    public static (LiveMicrophone? Microphone, SoundFault? Fault) Open(ISoundSystem sound, string? name, TimeProvider time, TimeSpan retry)
    {
        (ICaptureStream? stream, SoundFault? fault) = sound.OpenCapture(name);
        return stream is null ? (null, fault) : (new LiveMicrophone(sound, stream, stream.Device, time, retry), null);
    }

    /// <summary>One that is not there yet.</summary>
    public static LiveMicrophone Awaited(ISoundSystem sound, string name, TimeProvider time, TimeSpan retry) => new(sound, null, name, time, retry);

    /// <summary>Begins to read.</summary>
    /// <param name="whenChanged">Is told why the device is gone, and null when it is back; on the microphone's thread or a timer's.</param>
    public void Start(Action<string?> whenChanged)
    {
        changed = whenChanged;
        seenAt = time.GetTimestamp();
        watch = time.CreateTimer(_ => LookAtFrames(), null, Longest / 4, Longest / 4);
        thread.Start();
    }

    /// <inheritdoc/>
    public MicrophoneFrame? Read(CancellationToken stop)
    {
        while (true)
        {
            stop.ThrowIfCancellationRequested();
            if (queue.Take(given, out DateTimeOffset at, Look))
            {
                return new MicrophoneFrame(at, given);
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        watch?.Dispose();
        ending.Set();
        if ((thread.ThreadState & ThreadState.Unstarted) == 0 && !thread.Join(Ending))
        {
            return; // the driver holds the thread: what it uses is left to it, the program ends without
        }

        device.Dispose();
        ending.Dispose();
    }

    private void Run()
    {
        float[] frame = new float[SoundFrame.Samples];
        if (device.Stream is null)
        {
            Tell($"the microphone \"{Device}\" is not there; plug it in");
        }

        while (!ending.WaitOne(0))
        {
            if (device.Stream is not { } stream)
            {
                if (device.TryAgain(ending))
                {
                    Tell(null);
                }
            }
            else if (stream.Read(frame, out DateTimeOffset at) is { } fault)
            {
                Interlocked.Increment(ref losses);
                device.Lose();
                Tell(fault.Text);
            }
            else
            {
                Interlocked.Increment(ref frames);
                queue.Put(frame, at);
            }
        }
    }

    // Only a change is told: a microphone that is known to be gone is not told a second time by the watch.
    private void Tell(string? why)
    {
        lock (telling)
        {
            if ((why is null) != (told is null))
            {
                (told, seenAt) = (why, time.GetTimestamp());
                changed(why);
            }
        }
    }

    private void LookAtFrames()
    {
        lock (telling)
        {
            if (Frames != seen)
            {
                (seen, seenAt) = (Frames, time.GetTimestamp());
                if (stuck)
                {
                    stuck = false;
                    Tell(null);
                }
            }
            else if (told is null && time.GetElapsedTime(seenAt) >= Longest)
            {
                stuck = true;
                Tell(Patience.Over(Device).Text);
            }
        }
    }
}
