namespace HandsFree.Audio.Devices.Pulse;

/// <summary>Sound from a source of the server.</summary>
internal sealed class PulseCapture(PulseStream stream, TimeProvider time) : ICaptureStream
{
    private const int SampleBytes = sizeof(float);

    private readonly FrameClock clock = new();
    private readonly float[] gathered = new float[SoundFrame.Samples];
    private int have;
    private DateTimeOffset haveAt;
    private bool running;
    private float[] fragment = new float[SoundFrame.Samples];
    private int rest;
    private int restFrom;
    private DateTimeOffset restAt;

    /// <summary>Fragments of 20 ms.</summary>
    internal static PulseBufferSizes Sizes => new(uint.MaxValue, uint.MaxValue, uint.MaxValue, SoundFrame.Samples * SampleBytes);

    /// <inheritdoc/>
    public string Device => stream.Device;

    /// <inheritdoc/>
    public SoundFault? Read(Span<float> frame, out DateTimeOffset at)
    {
        at = default;
        long began = time.GetTimestamp();
        TimeSpan patience = running ? Patience.Running : Patience.Starting;
        while (have < SoundFrame.Samples)
        {
            if (stream.Fault is { } fault)
            {
                return fault;
            }

            if (Gather())
            {
                continue;
            }

            TimeSpan left = patience - time.GetElapsedTime(began);
            if (left <= TimeSpan.Zero)
            {
                return Patience.Over(Device);
            }

            stream.Connection.Turn(left);
        }

        gathered.CopyTo(frame);
        at = clock.Stamp(haveAt, SoundFrame.Samples);
        have = 0;
        running = true;
        return null;
    }

    /// <inheritdoc/>
    public void Dispose() => stream.Dispose();

    // The rest of a fragment is kept as the beginning of the next frame: what libpulse gave is dropped in one piece.
    private unsafe bool Gather()
    {
        if (rest > 0)
        {
            return TakeRest();
        }

        if (PulseNative.pa_stream_readable_size(stream.Handle) == 0
            || PulseNative.pa_stream_peek(stream.Handle, out nint data, out nuint bytes) < 0 || bytes == 0)
        {
            return false;
        }

        // The latency is that of the first sample that was not dropped yet: how long ago it was captured.
        DateTimeOffset first = time.GetLocalNow() - (stream.Latency ?? SampleTime.Of((int)bytes / SampleBytes));
        if (data == 0)
        {
            (have, rest) = (0, 0); // a hole: the sound in it is lost
        }
        else
        {
            ReadOnlySpan<float> samples = new((void*)data, (int)bytes / SampleBytes);
            Grow(samples.Length);
            samples.CopyTo(fragment);
            (rest, restFrom, restAt) = (samples.Length, 0, first);
        }

        _ = PulseNative.pa_stream_drop(stream.Handle); // fails only where there was nothing to drop
        return true;
    }

    private bool TakeRest()
    {
        int taken = Math.Min(rest, SoundFrame.Samples - have);
        if (have == 0)
        {
            haveAt = restAt;
        }

        fragment.AsSpan(restFrom, taken).CopyTo(gathered.AsSpan(have));
        have += taken;
        rest -= taken;
        restFrom += taken;
        restAt += SampleTime.Of(taken);
        return true;
    }

    private void Grow(int samples)
    {
        if (fragment.Length < samples)
        {
            fragment = new float[samples];
        }
    }
}
