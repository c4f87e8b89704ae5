using System.Runtime.InteropServices;

namespace HandsFree.Audio.Devices.Alsa;

/// <summary>ALSA's names of devices, as its configuration files hint at them.</summary>
internal static class AlsaDevices
{
    internal const string Default = "default";

    internal static (IReadOnlyList<SoundDevice> Devices, SoundFault? Fault) List()
    {
        int error = AlsaNative.snd_device_name_hint(-1, "pcm", out nint hints);
        if (error < 0)
        {
            return ([], AlsaFaults.Of(error, "ALSA"));
        }

        List<SoundDevice> devices = [];
        for (int i = 0; Marshal.ReadIntPtr(hints, i * nint.Size) is var hint && hint != 0; i++)
        {
            // What is no real device ("null", converters) is not offered; it can still be named.
            if (Text(hint, "NAME") is { } name && (name == Default || name.StartsWith("sysdefault:", StringComparison.Ordinal)))
            {
                string description = (Text(hint, "DESC") ?? name).ReplaceLineEndings(", ");
                string? way = Text(hint, "IOID");
                devices.AddRange(Flows(way).Select(flow => new SoundDevice(name, description, flow, false, name == Default)));
            }
        }

        _ = AlsaNative.snd_device_name_free_hint(hints); // nothing can be done about a failure
        return (devices, null);
    }

    private static SoundFlow[] Flows(string? way) => way switch
    {
        "Input" => [SoundFlow.Capture],
        "Output" => [SoundFlow.Playback],
        _ => [SoundFlow.Capture, SoundFlow.Playback],
    };

    private static string? Text(nint hint, string id)
    {
        nint text = AlsaNative.snd_device_name_get_hint(hint, id);
        string? value = Marshal.PtrToStringUTF8(text);
        AlsaNative.free(text);
        return value;
    }
}
