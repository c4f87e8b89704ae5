using System.Runtime.InteropServices;

namespace HandsFree.Audio.Devices.Pulse;

/// <summary>The beginning of pa_source_info and pa_sink_info, which is the same in both (pulse/introspect.h, PulseAudio 16).</summary>
[StructLayout(LayoutKind.Sequential)]
internal unsafe struct PulseDeviceInfo
{
    internal nint Name;
    internal uint Index;
    internal nint Description;
    internal PulseSampleSpec Spec;
    internal byte MapChannels;
    internal fixed int Map[32];
    internal uint OwnerModule;
    internal byte VolumeChannels;
    internal fixed uint Volume[32];
    internal int Mute;

    /// <summary>Of a source: index of the sink whose monitor it is, or PA_INVALID_INDEX. Of a sink: index of its monitor.</summary>
    internal uint Monitor;
}
