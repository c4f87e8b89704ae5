using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace HandsFree.Audio.Devices.Pulse;

/// <summary>Asks the server which devices it has.</summary>
internal sealed unsafe class PulseDevices
{
    private readonly List<(string Name, string Description, bool Monitor)> sources = [];
    private readonly List<(string Name, string Description)> sinks = [];
    private string? defaultSource;
    private string? defaultSink;

    internal static IReadOnlyList<SoundDevice> List(PulseConnection connection)
    {
        PulseDevices found = new();
        GCHandle handle = GCHandle.Alloc(found);
        try
        {
            nint data = GCHandle.ToIntPtr(handle);
            connection.Finish(PulseNative.pa_context_get_server_info(connection.Context, &Server, data));
            connection.Finish(PulseNative.pa_context_get_source_info_list(connection.Context, &Source, data));
            connection.Finish(PulseNative.pa_context_get_sink_info_list(connection.Context, &Sink, data));
        }
        finally
        {
            handle.Free();
        }

        return
        [
            .. found.sources.Select(s => new SoundDevice(s.Name, s.Description, SoundFlow.Capture, s.Monitor, s.Name == found.defaultSource)),
            .. found.sinks.Select(s => new SoundDevice(s.Name, s.Description, SoundFlow.Playback, false, s.Name == found.defaultSink)),
        ];
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static void Server(nint context, PulseServerInfo* info, nint data)
    {
        if (info is not null)
        {
            PulseDevices found = Of(data);
            found.defaultSource = Marshal.PtrToStringUTF8(info->DefaultSource);
            found.defaultSink = Marshal.PtrToStringUTF8(info->DefaultSink);
        }
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static void Source(nint context, PulseDeviceInfo* info, int end, nint data)
    {
        if (end == 0)
        {
            Of(data).sources.Add((Text(info->Name), Text(info->Description), info->Monitor != PulseNative.NoIndex));
        }
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static void Sink(nint context, PulseDeviceInfo* info, int end, nint data)
    {
        if (end == 0)
        {
            Of(data).sinks.Add((Text(info->Name), Text(info->Description)));
        }
    }

    private static PulseDevices Of(nint data) => (PulseDevices)GCHandle.FromIntPtr(data).Target!;

    private static string Text(nint text) => Marshal.PtrToStringUTF8(text) ?? "";
}
