using System.Runtime.Versioning;
using NAudio.CoreAudioApi;
using NAudio.Wave;

namespace HandsFree.Audio.Devices.Wasapi;

/// <summary>An audio client of 16 kHz mono floats that signals an event when it has, or wants, sound.</summary>
[SupportedOSPlatform("windows")]
internal sealed class WasapiClient : IDisposable
{
    /// <summary>Of the shared buffer, in units of 100 ns: 60 ms.</summary>
    private const long Length = 600_000;

    private readonly EventWaitHandle signal = new(false, EventResetMode.AutoReset);

    internal WasapiClient(AudioClient client)
    {
        Client = client;
        const AudioClientStreamFlags Flags = AudioClientStreamFlags.EventCallback | AudioClientStreamFlags.AutoConvertPcm | AudioClientStreamFlags.SrcDefaultQuality;
        client.Initialize(AudioClientShareMode.Shared, Flags, Length, 0, WaveFormat.CreateIeeeFloatWaveFormat(AudioClip.SampleRate, 1), Guid.Empty);
        client.SetEventHandle(signal.SafeWaitHandle.DangerousGetHandle());
    }

    internal AudioClient Client { get; }

    /// <summary>Waits for the device.</summary>
    /// <returns>False where it did not come in time.</returns>
    internal bool Wait(TimeSpan atMost) => signal.WaitOne(atMost);

    /// <inheritdoc/>
    public void Dispose()
    {
        Client.Dispose();
        signal.Dispose();
    }
}
