using HandsFree.App.Session;
using HandsFree.Audio.Devices;

namespace HandsFree.App.Live;

/// <summary>A real microphone, read on a thread of its own into a bounded queue. Where it goes, the frames stop, whoever watches is told,
/// and it is looked for until it is back.</summary>
internal sealed class LiveMicrophone : IMicrophone
{
    /// <summary>What waits at most while somebody decodes: ten seconds. Older frames are dropped and counted.</summary>
    private static readonly int Waiting = (int)(TimeSpan.FromSeconds(10) / SoundFrame.Duration);

    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(100);

    private readonly FrameQueue queue = new(Waiting);
    private readonly float[] given = new float[SoundFrame.Samples];
    private readonly Returning<ICaptureStream> device;
    private readonly ManualResetEvent ending = new(false);
    private readonly Thread thread;
    private Action<string?> changed = static _ => { };
    private long frames;
    private int losses;

    private LiveMicrophone(ISoundSystem sound, ICaptureStream? stream, string name, TimeSpan retry)
    {
        Device = name;
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
    /// <param name="retry">Between two trials to find a lost one.</param>
    public static (LiveMicrophone? Microphone, SoundFault? Fault) Open(ISoundSystem sound, string? name, TimeSpan retry)
    {
        (ICaptureStream? stream, SoundFault? fault) = sound.OpenCapture(name);
        return stream is null ? (null, fault) : (new LiveMicrophone(sound, stream, stream.Device, retry), null);
    }

    /// <summary>One that is not there yet.</summary>
    public static LiveMicrophone Awaited(ISoundSystem sound, string name, TimeSpan retry) => new(sound, null, name, retry);

    /// <summary>Begins to read.</summary>
    /// <param name="whenChanged">Is told why the device is gone, and null when it is back; on the microphone's thread.</param>
    public void Start(Action<string?> whenChanged)
    {
        changed = whenChanged;
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
        ending.Set();
        if ((thread.ThreadState & ThreadState.Unstarted) == 0)
        {
            thread.Join();
        }

        device.Dispose();
        ending.Dispose();
    }

    private void Run()
    {
        float[] frame = new float[SoundFrame.Samples];
        if (device.Stream is null)
        {
            changed($"the microphone \"{Device}\" is not there; plug it in");
        }

        while (!ending.WaitOne(0))
        {
            if (device.Stream is not { } stream)
            {
                if (device.TryAgain(ending))
                {
                    changed(null);
                }
            }
            else if (stream.Read(frame, out DateTimeOffset at) is { } fault)
            {
                Interlocked.Increment(ref losses);
                device.Lose();
                changed(fault.Text);
            }
            else
            {
                Interlocked.Increment(ref frames);
                queue.Put(frame, at);
            }
        }
    }
}
