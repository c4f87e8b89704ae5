namespace HandsFree.Audio.Devices.Pulse;

/// <summary>Sound to a sink of the server.</summary>
internal sealed class PulsePlayback(PulseStream stream, TimeProvider time) : IPlaybackStream
{
    private const int FrameBytes = SoundFrame.Samples * sizeof(float);

    /// <summary>So many frames lie ready at the server: what a busy machine may be late.</summary>
    private const int FramesAhead = 3;

    /// <summary>Playing begins with the first frame.</summary>
    internal static PulseBufferSizes Sizes => new(FramesAhead * FrameBytes, FrameBytes, FrameBytes, uint.MaxValue);

    /// <inheritdoc/>
    public string Device => stream.Device;

    /// <inheritdoc/>
    public TimeSpan Latency
    {
        get
        {
            stream.Connection.Turn(TimeSpan.Zero);
            return stream.Latency is { } said ? (said > TimeSpan.Zero ? said : TimeSpan.Zero) : SoundFrame.Duration * FramesAhead;
        }
    }

    /// <inheritdoc/>
    public SoundFault? Write(ReadOnlySpan<float> frame)
    {
        long began = time.GetTimestamp();
        while (PulseNative.pa_stream_writable_size(stream.Handle) is var room && (room < FrameBytes || room == nuint.MaxValue))
        {
            TimeSpan left = Patience.Playing - time.GetElapsedTime(began);
            if (stream.Fault is { } fault)
            {
                return fault;
            }

            if (left <= TimeSpan.Zero)
            {
                return new SoundFault(SoundProblem.Stalled, $"\"{Device}\" plays nothing any more; plug it in again, or see that the sound server runs");
            }

            stream.Connection.Turn(left);
        }

        _ = PulseNative.pa_stream_write(stream.Handle, frame, FrameBytes, 0, 0, 0); // a failure is the stream's state
        stream.Connection.Turn(TimeSpan.Zero);
        return stream.Fault;
    }

    /// <inheritdoc/>
    public void Flush()
    {
        if (stream.Fault is null)
        {
            stream.Connection.Finish(PulseNative.pa_stream_flush(stream.Handle, 0, 0));
        }
    }

    /// <inheritdoc/>
    public SoundFault? Look()
    {
        stream.Connection.Turn(TimeSpan.Zero);
        return stream.Fault;
    }

    /// <inheritdoc/>
    public void Dispose() => stream.Dispose();
}
