using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using NAudio.CoreAudioApi;

namespace HandsFree.Audio.Devices.Wasapi;

/// <summary>Sound from a Windows microphone.</summary>
[SupportedOSPlatform("windows")]
internal sealed class WasapiCaptureStream : ICaptureStream
{
    private readonly WasapiClient client;
    private readonly AudioCaptureClient packets;
    private readonly TimeProvider time;
    private readonly FrameClock clock = new();

    /// <summary>What is left of the last packet: a packet must be taken as a whole. A second is more than any packet has.</summary>
    private readonly float[] rest = new float[AudioClip.SampleRate];
    private int from;
    private int count;
    private DateTimeOffset restAt;
    private bool running;

    internal WasapiCaptureStream(AudioClient client, string device, TimeProvider time)
    {
        (Device, this.time) = (device, time);
        this.client = new WasapiClient(client);
        packets = client.AudioCaptureClient;
        client.Start();
    }

    /// <inheritdoc/>
    public string Device { get; }

    /// <inheritdoc/>
    public SoundFault? Read(Span<float> frame, out DateTimeOffset at)
    {
        at = default;
        DateTimeOffset began = default;
        int have = 0;
        try
        {
            while (have < SoundFrame.Samples)
            {
                if (count == 0 && !NextPacket())
                {
                    if (!client.Wait(running ? Patience.Running : Patience.Starting))
                    {
                        return Patience.Over(Device);
                    }

                    continue;
                }

                began = have == 0 ? restAt : began;
                int taken = Math.Min(count, SoundFrame.Samples - have);
                rest.AsSpan(from, taken).CopyTo(frame[have..]);
                (from, count, have, restAt) = (from + taken, count - taken, have + taken, restAt + SampleTime.Of(taken));
            }
        }
        catch (COMException e)
        {
            return WasapiFaults.Of(e, Device);
        }

        running = true;
        at = clock.Stamp(began, SoundFrame.Samples);
        return null;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        packets.Dispose();
        client.Dispose();
    }

    private unsafe bool NextPacket()
    {
        if (packets.GetNextPacketSize() == 0)
        {
            return false;
        }

        nint data = packets.GetBuffer(out int samples, out AudioClientBufferFlags flags, out _, out _);
        int kept = Math.Min(samples, rest.Length);
        if (flags.HasFlag(AudioClientBufferFlags.Silent))
        {
            rest.AsSpan(0, kept).Clear();
        }
        else
        {
            new ReadOnlySpan<float>((void*)data, kept).CopyTo(rest);
        }

        packets.ReleaseBuffer(samples);
        (from, count, restAt) = (0, kept, time.GetLocalNow() - SampleTime.Of(samples));
        return true;
    }
}
