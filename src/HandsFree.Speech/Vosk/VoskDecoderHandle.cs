using Microsoft.Win32.SafeHandles;

namespace HandsFree.Speech.Vosk;

/// <summary>Owns one native recogniser.</summary>
internal sealed class VoskDecoderHandle() : SafeHandleZeroOrMinusOneIsInvalid(ownsHandle: true)
{
    protected override bool ReleaseHandle()
    {
        VoskNative.vosk_recognizer_free(handle);
        return true;
    }
}
