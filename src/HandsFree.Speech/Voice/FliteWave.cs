using System.Runtime.InteropServices;

namespace HandsFree.Speech.Voice;

/// <summary>flite's cst_wave: samples of 16 bits, channels interleaved.</summary>
[StructLayout(LayoutKind.Sequential)]
internal readonly struct FliteWave
{
    internal readonly nint Type;
    internal readonly int SampleRate;
    internal readonly int SampleCount;
    internal readonly int Channels;
    internal readonly nint Samples;
}
