using HandsFree.Audio;
using HandsFree.Audio.Devices;
using HandsFree.Audio.Echo;
using HandsFree.Audio.Levels;

namespace HandsFree.App.Checks;

/// <summary>Listens to the room, and plays a chirp to find out how long the way from the loudspeaker to the microphone takes.</summary>
/// <param name="microphone">Open.</param>
/// <param name="loudspeaker">Open, or null.</param>
/// <param name="time">The clock of the microphone's times.</param>
internal sealed class SoundProbe(ICaptureStream microphone, IPlaybackStream? loudspeaker, TimeProvider time)
{
    /// <summary>From so much likeness on it is the chirp (our own limit: noise reaches 0.1).</summary>
    private const double Alike = 0.3;

    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan WayBack = TimeSpan.FromSeconds(1.5);

    private readonly List<float> heard = [];
    private readonly List<DateTimeOffset> times = [];

    /// <summary>What went wrong with a device, or null.</summary>
    public SoundFault? Fault { get; private set; }

    /// <summary>The room without speech, dBFS.</summary>
    public double NoiseDbfs { get; private set; } = LevelMeter.Floor;

    /// <summary>From "written" to "captured"; null where the chirp was not heard.</summary>
    public TimeSpan? Echo { get; private set; }

    /// <summary>Measures; takes three seconds.</summary>
    public void Run()
    {
        if (!Record(SampleTime.Samples(Quiet)))
        {
            return;
        }

        NoiseDbfs = LevelMeter.RmsDbfs(heard.ToArray().AsSpan(heard.Count / 2));
        if (loudspeaker is null)
        {
            return;
        }

        DateTimeOffset written = default;
        Task playing = Task.Run(() => written = Play());
        bool recorded = Record(heard.Count + SampleTime.Samples(Quiet + WayBack));
        playing.GetAwaiter().GetResult();
        if (recorded && Fault is null)
        {
            Find(written);
        }
    }

    private void Find(DateTimeOffset written)
    {
        TimedSound sound = new([.. heard], [.. times]);
        (int position, double likeness) = EchoFinder.Find(sound.Samples, Chirp.Make());
        TimeSpan way = sound.TimeOf(position) - written;
        Echo = likeness < Alike ? null : way > TimeSpan.Zero ? way : TimeSpan.Zero;
    }

    // Quiet first, so that the loudspeaker is awake when the chirp comes.
    private DateTimeOffset Play()
    {
        float[] sound = [.. new float[SampleTime.Samples(Quiet)], .. Chirp.Make(), .. new float[AudioClip.SampleRate / 2]];
        DateTimeOffset written = default;
        for (int i = 0; i + SoundFrame.Samples <= sound.Length; i += SoundFrame.Samples)
        {
            written = i == SampleTime.Samples(Quiet) ? time.GetLocalNow() : written;
            Fault ??= loudspeaker!.Write(sound.AsSpan(i, SoundFrame.Samples));
        }

        return written;
    }

    private bool Record(int until)
    {
        float[] frame = new float[SoundFrame.Samples];
        while (heard.Count < until)
        {
            if (microphone.Read(frame, out DateTimeOffset at) is { } fault)
            {
                Fault = fault;
                return false;
            }

            times.Add(at);
            heard.AddRange(frame);
        }

        return true;
    }
}
