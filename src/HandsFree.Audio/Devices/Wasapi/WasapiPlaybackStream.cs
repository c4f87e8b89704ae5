using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using NAudio.CoreAudioApi;

namespace HandsFree.Audio.Devices.Wasapi;

/// <summary>Sound to a Windows loudspeaker.</summary>
[SupportedOSPlatform("windows")]
internal sealed class WasapiPlaybackStream : IPlaybackStream
{
    private readonly WasapiClient client;
    private readonly AudioRenderClient packets;
    private readonly TimeProvider time;
    private readonly int length;

    internal WasapiPlaybackStream(AudioClient client, string device, TimeProvider time)
    {
        (Device, this.time) = (device, time);
        this.client = new WasapiClient(client);
        packets = client.AudioRenderClient;
        length = client.BufferSize;
        client.Start();
    }

    /// <inheritdoc/>
    public string Device { get; }

    /// <inheritdoc/>
    public TimeSpan Latency
    {
        get
        {
            try
            {
                return TimeSpan.FromTicks(client.Client.StreamLatency) + SampleTime.Of(client.Client.CurrentPadding);
            }
            catch (COMException)
            {
                return SampleTime.Of(length); // the device is gone; the next frame says so
            }
        }
    }

    /// <inheritdoc/>
    public unsafe SoundFault? Write(ReadOnlySpan<float> frame)
    {
        try
        {
            long asked = time.GetTimestamp();
            while (length - client.Client.CurrentPadding < frame.Length)
            {
                // A signal alone is no room for sound: the time decides.
                TimeSpan left = Patience.Playing - time.GetElapsedTime(asked);
                if (left <= TimeSpan.Zero || !client.Wait(left))
                {
                    return new SoundFault(SoundProblem.Stalled, $"\"{Device}\" plays nothing any more; plug it in again");
                }
            }

            frame.CopyTo(new Span<float>((void*)packets.GetBuffer(frame.Length), frame.Length));
            packets.ReleaseBuffer(frame.Length, AudioClientBufferFlags.None);
            return null;
        }
        catch (COMException e)
        {
            return WasapiFaults.Of(e, Device);
        }
    }

    /// <inheritdoc/>
    public void Flush()
    {
        if (Look() is null)
        {
            client.Client.Stop();
            client.Client.Reset();
            client.Client.Start();
        }
    }

    /// <inheritdoc/>
    public SoundFault? Look()
    {
        try
        {
            return client.Client.CurrentPadding >= 0 ? null : Patience.Over(Device);
        }
        catch (COMException e)
        {
            return WasapiFaults.Of(e, Device);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        packets.Dispose();
        client.Dispose();
    }
}
