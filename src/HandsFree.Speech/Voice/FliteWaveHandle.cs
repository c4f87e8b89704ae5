using Microsoft.Win32.SafeHandles;

namespace HandsFree.Speech.Voice;

/// <summary>Owns one wave that flite made.</summary>
internal sealed class FliteWaveHandle() : SafeHandleZeroOrMinusOneIsInvalid(ownsHandle: true)
{
    protected override bool ReleaseHandle()
    {
        FliteNative.delete_wave(handle);
        return true;
    }
}
