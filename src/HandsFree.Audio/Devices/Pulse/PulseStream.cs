namespace HandsFree.Audio.Devices.Pulse;

/// <summary>What capture and playback have in common: a connection, a stream that is pinned to one device, and what went wrong.</summary>
internal sealed class PulseStream : IDisposable
{
    private const PulseStreamFlags Flags =
        PulseStreamFlags.InterpolateTiming | PulseStreamFlags.AutoTimingUpdate | PulseStreamFlags.DontMove | PulseStreamFlags.AdjustLatency;

    private uint index;

    private PulseStream(PulseConnection connection, string device, string purpose)
    {
        Connection = connection;
        Device = device;
        Handle = PulseNative.pa_stream_new(connection.Context, purpose, PulseSampleSpec.Ours, 0);
    }

    internal PulseConnection Connection { get; }

    internal string Device { get; }

    /// <summary>The pa_stream.</summary>
    internal nint Handle { get; }

    /// <summary>What the device holds back, or null where it has not said so yet. Negative for a monitor's sound that is not played yet.</summary>
    internal TimeSpan? Latency => PulseNative.pa_stream_get_latency(Handle, out ulong microseconds, out int negative) >= 0
        ? TimeSpan.FromMicroseconds(negative == 0 ? microseconds : -(double)microseconds)
        : null;

    /// <summary>Why the stream does not work any more; null where it does. A stream on another device than at first is one.</summary>
    internal SoundFault? Fault => Connection.Fault
        ?? (PulseNative.pa_stream_get_state(Handle) != PulseStreamState.Ready ? PulseFaults.Of(PulseNative.pa_context_errno(Connection.Context), $"\"{Device}\"")
            : PulseNative.pa_stream_get_device_index(Handle) != index ? new SoundFault(SoundProblem.Moved, $"the sound server took \"{Device}\" away and gave another device; it is not used")
            : null);

    internal static (PulseStream? Stream, SoundFault? Fault) Open(string? server, TimeProvider time, SoundFlow flow, string? name, PulseBufferSizes sizes)
    {
        (PulseConnection? connection, SoundFault? fault) = PulseConnection.Open(server, time);
        if (connection is null)
        {
            return (null, fault);
        }

        (SoundDevice? device, SoundFault? none) = DeviceChoice.Of(PulseDevices.List(connection), flow, name);
        if (device is null)
        {
            connection.Dispose();
            return (null, none);
        }

        PulseStream stream = new(connection, device.Name, flow == SoundFlow.Capture ? "microphone" : "read-back");
        int begun = flow == SoundFlow.Capture
            ? PulseNative.pa_stream_connect_record(stream.Handle, device.Name, sizes, Flags)
            : PulseNative.pa_stream_connect_playback(stream.Handle, device.Name, sizes, Flags, 0, 0);
        if (begun >= 0)
        {
            connection.TurnUntil(() => PulseNative.pa_stream_get_state(stream.Handle) is not PulseStreamState.Creating, Patience.Starting);
        }

        stream.index = PulseNative.pa_stream_get_device_index(stream.Handle);
        if (stream.Fault is not { } broken)
        {
            return (stream, null);
        }

        stream.Dispose();
        return (null, broken);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _ = PulseNative.pa_stream_disconnect(Handle); // fails where it has ended by itself
        PulseNative.pa_stream_unref(Handle);
        Connection.Dispose();
    }
}
