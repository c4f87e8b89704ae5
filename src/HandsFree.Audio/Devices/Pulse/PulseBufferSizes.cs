using System.Runtime.InteropServices;

namespace HandsFree.Audio.Devices.Pulse;

/// <summary>pa_buffer_attr, all in bytes; uint.MaxValue leaves it to the server.</summary>
[StructLayout(LayoutKind.Sequential)]
internal readonly struct PulseBufferSizes
{
    internal PulseBufferSizes(uint target, uint before, uint smallest, uint fragment) =>
        (Most, Target, Before, Smallest, Fragment) = (uint.MaxValue, target, before, smallest, fragment);

    internal readonly uint Most;
    internal readonly uint Target;
    internal readonly uint Before;
    internal readonly uint Smallest;
    internal readonly uint Fragment;
}
