using System.Runtime.InteropServices;

namespace HandsFree.Speech.Voice;

/// <summary>The few functions of flite 2.2 (Debian libflite1) that are needed; flite.h and cst_wave.h.</summary>
internal static partial class FliteNative
{
    internal const string Library = "libflite.so.1";
    internal const string SltLibrary = "libflite_cmu_us_slt.so.1";

    [LibraryImport(Library)]
    internal static partial int flite_init();

    [LibraryImport(SltLibrary)]
    internal static partial nint register_cmu_us_slt(nint directory);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial FliteWaveHandle flite_text_to_wave(string text, nint voice);

    [LibraryImport(Library)]
    internal static partial void delete_wave(nint wave);

    /// <summary>The C library's: flite draws the noise of its consonants from rand().</summary>
    [LibraryImport("libc")]
    internal static partial void srand(uint seed);
}
