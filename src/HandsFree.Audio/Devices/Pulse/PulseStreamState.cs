namespace HandsFree.Audio.Devices.Pulse;

/// <summary>pa_stream_state_t.</summary>
internal enum PulseStreamState
{
    Unconnected,
    Creating,
    Ready,
    Failed,
    Terminated,
}
