using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using NAudio.CoreAudioApi;

namespace HandsFree.Audio.Devices.Wasapi;

/// <summary>Sound from a Windows microphone.</summary>
[SupportedOSPlatform("windows")]
internal sealed class WasapiCaptureStream : ICaptureStream, IPacketSource
{
    private readonly WasapiClient client;
    private readonly AudioCaptureClient packets;
    private readonly PacketCapture frames;

    internal WasapiCaptureStream(AudioClient client, string device, TimeProvider time)
    {
        Device = device;
        frames = new PacketCapture(this, device, time);
        this.client = new WasapiClient(client);
        packets = client.AudioCaptureClient;
        client.Start();
    }

    /// <inheritdoc/>
    public string Device { get; }

    /// <inheritdoc/>
    public SoundFault? Read(Span<float> frame, out DateTimeOffset at)
    {
        try
        {
            return frames.Read(frame, out at);
        }
        catch (COMException e)
        {
            at = default;
            return WasapiFaults.Of(e, Device);
        }
    }

    /// <inheritdoc/>
    public void Wait(TimeSpan atMost) => client.Wait(atMost);

    /// <inheritdoc/>
    public unsafe int Take(Span<float> samples)
    {
        if (packets.GetNextPacketSize() == 0)
        {
            return 0;
        }

        nint data = packets.GetBuffer(out int length, out AudioClientBufferFlags flags, out _, out _);
        int kept = Math.Min(length, samples.Length);
        if (flags.HasFlag(AudioClientBufferFlags.Silent))
        {
            samples[..kept].Clear();
        }
        else
        {
            new ReadOnlySpan<float>((void*)data, kept).CopyTo(samples);
        }

        packets.ReleaseBuffer(length);
        return length;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        packets.Dispose();
        client.Dispose();
    }
}
