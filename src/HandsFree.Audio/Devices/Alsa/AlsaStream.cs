namespace HandsFree.Audio.Devices.Alsa;

/// <summary>An open PCM of 16 kHz mono floats; ALSA converts where the device can't.</summary>
internal sealed class AlsaStream : IDisposable
{
    private const int FormatFloatLittleEndian = 14;
    private const int AccessInterleaved = 3;
    private const uint LatencyMicroseconds = 60_000;

    private AlsaStream(nint pcm, string device) => (Handle, Device) = (pcm, device);

    internal nint Handle { get; }

    internal string Device { get; }

    /// <summary>What lies between the program and the air, or null where the device does not say.</summary>
    internal TimeSpan? Delay => AlsaNative.snd_pcm_delay(Handle, out nint frames) >= 0 && frames >= 0 ? SampleTime.Of(frames) : null;

    /// <summary>Opens a device; a name that ALSA's hints do not have can be opened too.</summary>
    internal static (AlsaStream? Stream, SoundFault? Fault) Open(SoundFlow flow, string? name)
    {
        string device = name ?? AlsaDevices.Default;
        int error = AlsaNative.snd_pcm_open(out nint pcm, device, flow == SoundFlow.Capture ? 1 : 0, 0);
        if (error < 0)
        {
            return (null, AlsaFaults.OfOpening(error, device));
        }

        error = AlsaNative.snd_pcm_set_params(pcm, FormatFloatLittleEndian, AccessInterleaved, 1, AudioClip.SampleRate, 1, LatencyMicroseconds);
        if (error < 0)
        {
            _ = AlsaNative.snd_pcm_close(pcm); // the first error is the one that counts
            return (null, AlsaFaults.Of(error, device));
        }

        return (new AlsaStream(pcm, device), null);
    }

    /// <inheritdoc/>
    public void Dispose() => _ = AlsaNative.snd_pcm_close(Handle);
}
