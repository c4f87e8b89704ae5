using System.Runtime.InteropServices;

namespace HandsFree.Audio.Devices.Pulse;

/// <summary>The functions of libpulse (PulseAudio's client library, which PipeWire serves too) that are needed: pulse/mainloop.h,
/// context.h, stream.h, introspect.h. Its main loop is turned by our own threads.</summary>
internal static unsafe partial class PulseNative
{
    internal const string Library = "libpulse.so.0";

    /// <summary>PA_INVALID_INDEX.</summary>
    internal const uint NoIndex = uint.MaxValue;

    [LibraryImport(Library)]
    internal static partial nint pa_mainloop_new();

    [LibraryImport(Library)]
    internal static partial nint pa_mainloop_get_api(nint loop);

    [LibraryImport(Library)]
    internal static partial int pa_mainloop_prepare(nint loop, int microseconds);

    [LibraryImport(Library)]
    internal static partial int pa_mainloop_poll(nint loop);

    [LibraryImport(Library)]
    internal static partial int pa_mainloop_dispatch(nint loop);

    [LibraryImport(Library)]
    internal static partial void pa_mainloop_free(nint loop);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial nint pa_context_new(nint api, string name);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial int pa_context_connect(nint context, string? server, int flags, nint spawn);

    [LibraryImport(Library)]
    internal static partial PulseContextState pa_context_get_state(nint context);

    [LibraryImport(Library)]
    internal static partial int pa_context_errno(nint context);

    [LibraryImport(Library)]
    internal static partial void pa_context_disconnect(nint context);

    [LibraryImport(Library)]
    internal static partial void pa_context_unref(nint context);

    [LibraryImport(Library)]
    internal static partial nint pa_context_get_source_info_list(nint context, delegate* unmanaged[Cdecl]<nint, PulseDeviceInfo*, int, nint, void> told, nint data);

    [LibraryImport(Library)]
    internal static partial nint pa_context_get_sink_info_list(nint context, delegate* unmanaged[Cdecl]<nint, PulseDeviceInfo*, int, nint, void> told, nint data);

    [LibraryImport(Library)]
    internal static partial nint pa_context_get_server_info(nint context, delegate* unmanaged[Cdecl]<nint, PulseServerInfo*, nint, void> told, nint data);

    [LibraryImport(Library)]
    internal static partial int pa_operation_get_state(nint operation);

    [LibraryImport(Library)]
    internal static partial void pa_operation_unref(nint operation);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial nint pa_stream_new(nint context, string name, in PulseSampleSpec spec, nint channelMap);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial int pa_stream_connect_record(nint stream, string device, in PulseBufferSizes sizes, PulseStreamFlags flags);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial int pa_stream_connect_playback(nint stream, string device, in PulseBufferSizes sizes, PulseStreamFlags flags, nint volume, nint inTimeWith);

    [LibraryImport(Library)]
    internal static partial PulseStreamState pa_stream_get_state(nint stream);

    [LibraryImport(Library)]
    internal static partial uint pa_stream_get_device_index(nint stream);

    [LibraryImport(Library)]
    internal static partial nuint pa_stream_readable_size(nint stream);

    [LibraryImport(Library)]
    internal static partial int pa_stream_peek(nint stream, out nint data, out nuint bytes);

    [LibraryImport(Library)]
    internal static partial int pa_stream_drop(nint stream);

    [LibraryImport(Library)]
    internal static partial nuint pa_stream_writable_size(nint stream);

    [LibraryImport(Library)]
    internal static partial int pa_stream_write(nint stream, ReadOnlySpan<float> data, nuint bytes, nint free, long offset, int seek);

    [LibraryImport(Library)]
    internal static partial int pa_stream_get_latency(nint stream, out ulong microseconds, out int negative);

    [LibraryImport(Library)]
    internal static partial nint pa_stream_flush(nint stream, nint told, nint data);

    [LibraryImport(Library)]
    internal static partial int pa_stream_disconnect(nint stream);

    [LibraryImport(Library)]
    internal static partial void pa_stream_unref(nint stream);

    [LibraryImport(Library)]
    internal static partial nint pa_strerror(int error);
}
