using HandsFree.App.Session;

namespace HandsFree.App.Demo.Room;

/// <summary>The loudspeaker of the made-up room: plays into it as the room's time passes.</summary>
internal sealed class DemoSpeaker(TimeProvider time) : ILoudspeaker
{
    private readonly Lock gate = new();
    private readonly Queue<float> waiting = [];
    private IPlaybackWatch? watch;
    private bool playing;

    /// <inheritdoc/>
    public TimeSpan Latency { get; } = TimeSpan.FromMilliseconds(40);

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

    /// <inheritdoc/>
    public void Connect(IPlaybackWatch watch) => this.watch = watch;

    /// <inheritdoc/>
    public void Play(IReadOnlyList<float> samples)
    {
        bool begins;
        lock (gate)
        {
            begins = !playing;
            playing = true;
            foreach (float sample in samples)
            {
                waiting.Enqueue(sample);
            }
        }

        if (begins)
        {
            watch?.Started(time.GetLocalNow());
        }
    }

    /// <inheritdoc/>
    public void Silence()
    {
        lock (gate)
        {
            waiting.Clear();
        }

        EndIfPlayed();
    }

    /// <summary>What is played in the next frame; quiet where nothing is.</summary>
    public void Fill(Span<float> frame)
    {
        frame.Clear();
        lock (gate)
        {
            for (int i = 0; i < frame.Length && waiting.TryDequeue(out float sample); i++)
            {
                frame[i] = sample;
            }
        }
    }

    /// <summary>Tells that all has been played, once the room's time has passed it.</summary>
    public void EndIfPlayed()
    {
        lock (gate)
        {
            if (!playing || waiting.Count > 0)
            {
                return;
            }

            playing = false;
        }

        watch?.Ended(time.GetLocalNow());
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // Holds no device.
    }
}
