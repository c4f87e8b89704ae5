using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using NAudio.CoreAudioApi;

namespace HandsFree.Audio.Devices.Wasapi;

/// <summary>Windows through WASAPI in shared mode; Windows converts to 16 kHz mono. A stream stays with its device.</summary>
/// <param name="time">The clock of the frames' times.</param>
[SupportedOSPlatform("windows")]
public sealed class WasapiSound(TimeProvider time) : ISoundSystem
{
    /// <inheritdoc/>
    public string Name => "wasapi";

    /// <inheritdoc/>
    public (IReadOnlyList<SoundDevice> Devices, SoundFault? Fault) List()
    {
        try
        {
            using MMDeviceEnumerator all = new();
            return ([.. Of(all, DataFlow.Capture, SoundFlow.Capture), .. Of(all, DataFlow.Render, SoundFlow.Playback)], null);
        }
        catch (COMException e)
        {
            return ([], WasapiFaults.Of(e, "Windows' sound"));
        }
    }

    /// <inheritdoc/>
    public (ICaptureStream? Stream, SoundFault? Fault) OpenCapture(string? device) =>
        Open<ICaptureStream>(SoundFlow.Capture, device, (client, name) => new WasapiCaptureStream(client, name, time));

    /// <inheritdoc/>
    public (IPlaybackStream? Stream, SoundFault? Fault) OpenPlayback(string? device) =>
        Open<IPlaybackStream>(SoundFlow.Playback, device, (client, name) => new WasapiPlaybackStream(client, name));

    private static IEnumerable<SoundDevice> Of(MMDeviceEnumerator all, DataFlow from, SoundFlow flow)
    {
        string? usual = all.HasDefaultAudioEndpoint(from, Role.Communications) ? all.GetDefaultAudioEndpoint(from, Role.Communications).ID : null;
        foreach (MMDevice device in all.EnumerateAudioEndPoints(from, DeviceState.Active))
        {
            using (device)
            {
                yield return new SoundDevice(device.ID, device.FriendlyName, flow, false, device.ID == usual);
            }
        }
    }

    private (T? Stream, SoundFault? Fault) Open<T>(SoundFlow flow, string? name, Func<AudioClient, string, T> make)
        where T : class
    {
        (IReadOnlyList<SoundDevice> devices, SoundFault? fault) = List();
        (SoundDevice? device, SoundFault? none) = fault is null ? DeviceChoice.Of(devices, flow, name) : (null, fault);
        if (device is null)
        {
            return (null, none);
        }

        try
        {
            using MMDeviceEnumerator all = new();
            using MMDevice found = all.GetDevice(device.Name);
            return (make(found.CreateAudioClient(), device.Name), null);
        }
        catch (Exception e) when (e is COMException or UnauthorizedAccessException)
        {
            return (null, WasapiFaults.Of(e, device.Description));
        }
    }
}
