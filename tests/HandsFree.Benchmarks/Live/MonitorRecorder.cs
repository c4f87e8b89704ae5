using HandsFree.Audio.Devices;

namespace HandsFree.Benchmarks.Live;

/// <summary>Records what a sink plays, with the times of its frames, on a thread of its own.</summary>
internal sealed class MonitorRecorder : IDisposable
{
    private readonly ICaptureStream stream;
    private readonly Thread thread;
    private readonly Lock gate = new();
    private readonly List<float> samples = [];
    private readonly List<DateTimeOffset> times = [];
    private volatile bool ending;

    public MonitorRecorder(ISoundSystem sound, string monitor)
    {
        (ICaptureStream? opened, SoundFault? fault) = sound.OpenCapture(monitor);
        stream = opened ?? throw new InvalidOperationException(fault!.Text);
        thread = new Thread(Record) { IsBackground = true, Name = "recorder" };
        thread.Start();
    }

    /// <summary>Ends the recording.</summary>
    public TimedSound Stop()
    {
        ending = true;
        thread.Join();
        lock (gate)
        {
            return new TimedSound([.. samples], [.. times]);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Stop();
        stream.Dispose();
    }

    private void Record()
    {
        float[] frame = new float[SoundFrame.Samples];
        while (!ending && stream.Read(frame, out DateTimeOffset at) is null)
        {
            lock (gate)
            {
                samples.AddRange(frame);
                times.Add(at);
            }
        }
    }
}
