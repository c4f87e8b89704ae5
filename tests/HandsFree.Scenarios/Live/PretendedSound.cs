using HandsFree.Audio.Devices;

namespace HandsFree.Scenarios.Live;

/// <summary>A sound system with one microphone and one earpiece that can be unplugged. Its frames come as fast as they are read.</summary>
internal sealed class PretendedSound : ISoundSystem
{
    private volatile bool plugged = true;

    public string Name => "pretended";

    public bool Plugged
    {
        get => plugged;
        set => plugged = value;
    }

    /// <summary>Reset, a driver that neither brings a frame nor comes back.</summary>
    public ManualResetEventSlim Comes { get; } = new(true);

    /// <summary>Names that were asked for.</summary>
    public List<string?> Opened { get; } = [];

    /// <summary>All that was played.</summary>
    public List<float> Played { get; } = [];

    public int Flushes { get; private set; }

    public (IReadOnlyList<SoundDevice> Devices, SoundFault? Fault) List() => ([], null);

    public (ICaptureStream? Stream, SoundFault? Fault) OpenCapture(string? device) => Open(device) ? (new Capture(this), null) : (null, Missing);

    public (IPlaybackStream? Stream, SoundFault? Fault) OpenPlayback(string? device) => Open(device) ? (new Playback(this), null) : (null, Missing);

    private static SoundFault Missing => new(SoundProblem.NoDevice, "not there");

    private static SoundFault Gone => new(SoundProblem.Lost, "gone");

    private bool Open(string? device)
    {
        lock (Opened)
        {
            Opened.Add(device);
        }

        return plugged;
    }

    private sealed class Capture(PretendedSound sound) : ICaptureStream
    {
        private int count;

        public string Device => "headset";

        public SoundFault? Read(Span<float> frame, out DateTimeOffset at)
        {
            at = DateTimeOffset.UnixEpoch + (count++ * SoundFrame.Duration);
            frame.Fill(0.5f);
            Thread.Yield();
            sound.Comes.Wait();
            return sound.plugged ? null : Gone;
        }

        public void Dispose()
        {
            // Holds no device.
        }
    }

    private sealed class Playback(PretendedSound sound) : IPlaybackStream
    {
        public string Device => "headset";

        public TimeSpan Latency => TimeSpan.FromMilliseconds(35);

        public SoundFault? Write(ReadOnlySpan<float> frame)
        {
            lock (sound.Played)
            {
                sound.Played.AddRange(frame);
            }

            return Look();
        }

        public void Flush() => sound.Flushes++;

        public SoundFault? Look() => sound.plugged ? null : Gone;

        public void Dispose()
        {
            // Holds no device.
        }
    }
}
