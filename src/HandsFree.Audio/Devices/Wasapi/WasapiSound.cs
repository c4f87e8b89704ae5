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
        Open<IPlaybackStream>(SoundFlow.Playback, device, (client, name) => new WasapiPlaybackStream(client, name, time));

    private static IEnumerable<SoundDevice> Of(MMDeviceEnumerator all, DataFlow from, SoundFlow flow)
    {
        string? usual = all.HasDefaultAudioEndpoint(from, Role.Communications) ? all.GetDefaultAudioEndpoint(from, Role.Communications).ID : null;
        foreach ((string id, string name) in Named(all, from))
        {
            yield return new SoundDevice(name, "Windows", flow, false, id == usual);
        }
    }

    /// <summary>The devices by the names that Windows' own settings show: its ids say nothing to anybody.</summary>
    private static (string Id, string Name)[] Named(MMDeviceEnumerator all, DataFlow flow)
    {
        List<(string Id, string Name)> found = [];
        foreach (MMDevice device in all.EnumerateAudioEndPoints(flow, DeviceState.Active))
        {
            using (device)
            {
                found.Add((device.ID, device.FriendlyName));
            }
        }

        return DeviceNames.Different(found);
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
            (string Id, string Name)[] named = Named(all, flow == SoundFlow.Capture ? DataFlow.Capture : DataFlow.Render);
            if (Array.Find(named, d => d.Name == device.Name).Id is not { } id)
            {
                return (null, new SoundFault(SoundProblem.Lost, $"\"{device.Name}\" is gone; plug it in again"));
            }

            using MMDevice found = all.GetDevice(id);
            return (make(found.CreateAudioClient(), device.Name), null);
        }
        catch (Exception e) when (e is COMException or UnauthorizedAccessException)
        {
            return (null, WasapiFaults.Of(e, device.Name));
        }
    }
}
