using Microsoft.Win32.SafeHandles;

namespace HandsFree.Speech.Sphinx;

/// <summary>Owns one reference to a set of decoder settings (cmd_ln_t).</summary>
internal sealed class SphinxSettingsHandle() : SafeHandleZeroOrMinusOneIsInvalid(ownsHandle: true)
{
    protected override bool ReleaseHandle()
    {
        _ = SphinxNative.cmd_ln_free_r(handle);
        return true;
    }
}
