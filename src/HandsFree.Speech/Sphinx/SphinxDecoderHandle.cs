using Microsoft.Win32.SafeHandles;

namespace HandsFree.Speech.Sphinx;

/// <summary>Owns one decoder (ps_decoder_t).</summary>
internal sealed class SphinxDecoderHandle() : SafeHandleZeroOrMinusOneIsInvalid(ownsHandle: true)
{
    protected override bool ReleaseHandle()
    {
        _ = SphinxNative.ps_free(handle);
        return true;
    }
}
