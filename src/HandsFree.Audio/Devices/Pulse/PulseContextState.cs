namespace HandsFree.Audio.Devices.Pulse;

/// <summary>pa_context_state_t.</summary>
internal enum PulseContextState
{
    Unconnected,
    Connecting,
    Authorizing,
    SettingName,
    Ready,
    Failed,
    Terminated,
}
