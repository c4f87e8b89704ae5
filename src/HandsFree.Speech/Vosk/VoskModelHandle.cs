using Microsoft.Win32.SafeHandles;

namespace HandsFree.Speech.Vosk;

/// <summary>Owns one reference to a loaded model. Its recognisers hold their own: the order of freeing does not matter.</summary>
internal sealed class VoskModelHandle() : SafeHandleZeroOrMinusOneIsInvalid(ownsHandle: true)
{
    protected override bool ReleaseHandle()
    {
        VoskNative.vosk_model_free(handle);
        return true;
    }
}
