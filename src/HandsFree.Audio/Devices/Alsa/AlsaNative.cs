using System.Runtime.InteropServices;

namespace HandsFree.Audio.Devices.Alsa;

/// <summary>The functions of ALSA's library that are needed: alsa/pcm.h and control.h.</summary>
internal static unsafe partial class AlsaNative
{
    internal const string Library = "libasound.so.2";

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial int snd_pcm_open(out nint pcm, string name, int stream, int mode);

    [LibraryImport(Library)]
    internal static partial int snd_pcm_set_params(nint pcm, int format, int access, uint channels, uint rate, int resample, uint latencyMicroseconds);

    [LibraryImport(Library)]
    internal static partial int snd_pcm_start(nint pcm);

    [LibraryImport(Library)]
    internal static partial int snd_pcm_prepare(nint pcm);

    [LibraryImport(Library)]
    internal static partial int snd_pcm_drop(nint pcm);

    [LibraryImport(Library)]
    internal static partial int snd_pcm_wait(nint pcm, int milliseconds);

    [LibraryImport(Library)]
    internal static partial nint snd_pcm_readi(nint pcm, Span<float> samples, nuint frames);

    [LibraryImport(Library)]
    internal static partial nint snd_pcm_writei(nint pcm, ReadOnlySpan<float> samples, nuint frames);

    [LibraryImport(Library)]
    internal static partial nint snd_pcm_avail_update(nint pcm);

    [LibraryImport(Library)]
    internal static partial int snd_pcm_delay(nint pcm, out nint frames);

    [LibraryImport(Library)]
    internal static partial int snd_pcm_recover(nint pcm, int error, int silent);

    [LibraryImport(Library)]
    internal static partial int snd_pcm_close(nint pcm);

    [LibraryImport(Library)]
    internal static partial nint snd_strerror(int error);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial int snd_device_name_hint(int card, string kind, out nint hints);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial nint snd_device_name_get_hint(nint hint, string id);

    [LibraryImport(Library)]
    internal static partial int snd_device_name_free_hint(nint hints);

    [LibraryImport(Library)]
    internal static partial int snd_lib_error_set_handler(delegate* unmanaged[Cdecl]<nint, int, nint, int, nint, void> handler);

    [LibraryImport("libc")]
    internal static partial void free(nint memory);
}
