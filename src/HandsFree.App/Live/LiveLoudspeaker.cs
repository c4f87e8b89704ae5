using HandsFree.App.Session;
using HandsFree.Audio.Devices;

namespace HandsFree.App.Live;

/// <summary>A real loudspeaker or earpiece, fed frame by frame on a thread of its own, so that it can be silenced at once. Where it
/// goes, what waits is dropped, whoever watches is told, and it is looked for until it is back.</summary>
internal sealed class LiveLoudspeaker : ILoudspeaker
{
    private static readonly TimeSpan LookAtIt = TimeSpan.FromMilliseconds(500);

    private readonly object gate = new();
    private readonly Queue<float[]> waiting = [];
    private readonly Returning<IPlaybackStream> device;
    private readonly ManualResetEvent ending = new(false);
    private readonly TimeProvider time;
    private readonly TimeSpan leastLatency;
    private readonly Thread thread;
    private readonly float[] frame = new float[SoundFrame.Samples];
    private Action<string?> changed = static _ => { };
    private IPlaybackWatch? watch;
    private int next;
    private bool playing;
    private bool silence;
    private bool over;
    private string? whySilent;
    private TimeSpan latency;

    private LiveLoudspeaker(ISoundSystem sound, IPlaybackStream stream, TimeProvider time, TimeSpan leastLatency, TimeSpan retry)
    {
        Device = stream.Device;
        device = new Returning<IPlaybackStream>(stream, stream.Device, sound.OpenPlayback, retry);
        (this.time, this.leastLatency, latency) = (time, leastLatency, leastLatency);
        thread = new Thread(Run) { IsBackground = true, Name = "loudspeaker" };
    }

    /// <summary>Its name.</summary>
    public string Device { get; }

    /// <inheritdoc/>
    public string? WhySilent
    {
        get
        {
            lock (gate)
            {
                return whySilent;
            }
        }
    }

    /// <inheritdoc/>
    public TimeSpan Latency
    {
        get
        {
            lock (gate)
            {
                return latency;
            }
        }
    }

    /// <inheritdoc/>
    public bool IsPlaying
    {
        get
        {
            lock (gate)
            {
                return playing;
            }
        }
    }

    /// <summary>Opens a loudspeaker; <see cref="Start"/> starts it.</summary>
    /// <param name="sound">The machine's sound.</param>
    /// <param name="name">Its name, or null for the usual one.</param>
    /// <param name="time">The clock.</param>
    /// <param name="leastLatency">As "check" measured it; what the device says counts where it is more.</param>
    /// <param name="retry">Between two trials to find a lost one.</param>
    public static (LiveLoudspeaker? Loudspeaker, SoundFault? Fault) Open(
        ISoundSystem sound, string? name, TimeProvider time, TimeSpan leastLatency, TimeSpan retry)
    {
        (IPlaybackStream? stream, SoundFault? fault) = sound.OpenPlayback(name);
        return stream is null ? (null, fault) : (new LiveLoudspeaker(sound, stream, time, leastLatency, retry), null);
    }

    /// <summary>Begins to play.</summary>
    /// <param name="whenChanged">Is told why the device is gone, and null when it is back; on the loudspeaker's thread.</param>
    public void Start(Action<string?> whenChanged)
    {
        changed = whenChanged;
        thread.Start();
    }

    /// <inheritdoc/>
    public void Connect(IPlaybackWatch watch) => this.watch = watch;

    /// <inheritdoc/>
    public void Play(IReadOnlyList<float> samples)
    {
        lock (gate)
        {
            if (whySilent is not null)
            {
                return;
            }

            waiting.Enqueue([.. samples]);
            if (!playing)
            {
                playing = true;
                watch?.Started(time.GetLocalNow());
            }

            Monitor.Pulse(gate);
        }
    }

    /// <inheritdoc/>
    public void Silence()
    {
        lock (gate)
        {
            if (playing)
            {
                Empty();
                silence = true;
                Monitor.Pulse(gate);
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        ending.Set();
        lock (gate)
        {
            over = true;
            Monitor.Pulse(gate);
        }

        if ((thread.ThreadState & ThreadState.Unstarted) == 0)
        {
            thread.Join();
        }

        device.Dispose();
        ending.Dispose();
    }

    private void Run()
    {
        while (!ending.WaitOne(0))
        {
            if (device.Stream is not { } stream)
            {
                Search();
            }
            else if (TurnOf(stream) is { } fault)
            {
                Lose(fault);
            }
        }
    }

    private void Search()
    {
        if (device.TryAgain(ending))
        {
            lock (gate)
            {
                whySilent = null;
            }

            changed(null);
        }
    }

    private SoundFault? TurnOf(IPlaybackStream stream)
    {
        (bool flush, bool write) = WaitForWork();
        if (flush)
        {
            stream.Flush();
            EndUnlessMore(stream.Latency);
        }

        if (!write)
        {
            return stream.Look();
        }

        SoundFault? fault = stream.Write(frame);
        if (fault is null)
        {
            EndUnlessMore(stream.Latency);
        }

        return fault;
    }

    private (bool Flush, bool Write) WaitForWork()
    {
        lock (gate)
        {
            if (waiting.Count == 0 && !silence && !over)
            {
                Monitor.Wait(gate, LookAtIt);
            }

            (bool flush, silence) = (silence, false);
            return (flush, Fill());
        }
    }

    // The last frame of a text is filled up with quiet.
    private bool Fill()
    {
        if (!waiting.TryPeek(out float[]? piece))
        {
            return false;
        }

        int length = Math.Min(piece.Length - next, frame.Length);
        frame.AsSpan(length).Clear();
        piece.AsSpan(next, length).CopyTo(frame);
        next += length;
        if (next == piece.Length)
        {
            waiting.Dequeue();
            next = 0;
        }

        return true;
    }

    private void EndUnlessMore(TimeSpan heldBack)
    {
        lock (gate)
        {
            latency = heldBack > leastLatency ? heldBack : leastLatency;
            if (!playing || waiting.Count > 0)
            {
                return;
            }

            playing = false;
        }

        watch?.Ended(time.GetLocalNow());
    }

    private void Lose(SoundFault fault)
    {
        device.Lose();
        bool was;
        lock (gate)
        {
            Empty();
            (was, playing, whySilent) = (playing, false, fault.Text);
        }

        if (was)
        {
            watch?.Ended(time.GetLocalNow());
        }

        changed(fault.Text);
    }

    private void Empty()
    {
        waiting.Clear();
        next = 0;
    }
}
