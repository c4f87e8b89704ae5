using System.Runtime.InteropServices;

namespace HandsFree.Audio.Devices.Pulse;

/// <summary>The beginning of pa_server_info.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct PulseServerInfo
{
    internal nint User;
    internal nint Host;
    internal nint Version;
    internal nint Server;
    internal PulseSampleSpec Spec;
    internal nint DefaultSink;
    internal nint DefaultSource;
}
