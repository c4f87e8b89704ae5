using System.Runtime.InteropServices;

namespace HandsFree.Audio.Devices.Pulse;

/// <summary>pa_sample_spec.</summary>
[StructLayout(LayoutKind.Sequential)]
internal readonly struct PulseSampleSpec(int format, uint rate, byte channels)
{
    internal readonly int Format = format;
    internal readonly uint Rate = rate;
    internal readonly byte Channels = channels;

    /// <summary>16 kHz mono, floats, little-endian (PA_SAMPLE_FLOAT32LE).</summary>
    internal static PulseSampleSpec Ours => new(5, AudioClip.SampleRate, 1);
}
