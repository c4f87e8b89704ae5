namespace HandsFree.Audio.Devices.Pulse;

/// <summary>Those of pa_stream_flags_t that are used.</summary>
[Flags]
internal enum PulseStreamFlags
{
    None = 0,

    /// <summary>Times between the server's reports are worked out.</summary>
    InterpolateTiming = 0x2,

    /// <summary>The server reports times by itself.</summary>
    AutoTimingUpdate = 0x8,

    /// <summary>The stream ends when its device goes; without this the server gives it another one, in silence.</summary>
    DontMove = 0x200,

    /// <summary>The device's own buffer is fitted to what is asked for.</summary>
    AdjustLatency = 0x2000,
}
