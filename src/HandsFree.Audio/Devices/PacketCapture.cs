namespace HandsFree.Audio.Devices;

/// <summary>Makes frames of a device's packets. A frame that does not come in time ends the stream, whatever the device signals
/// meanwhile.</summary>
/// <param name="source">The packets.</param>
/// <param name="device">The device's name, for the error.</param>
/// <param name="time">The clock of the frames' times.</param>
internal sealed class PacketCapture(IPacketSource source, string device, TimeProvider time)
{
    private readonly FrameClock clock = new();

    /// <summary>What is left of the last packet: a packet must be taken as a whole. A second is more than any packet has.</summary>
    private readonly float[] rest = new float[AudioClip.SampleRate];
    private int from;
    private int count;
    private DateTimeOffset restAt;
    private bool running;

    /// <summary>As <see cref="ICaptureStream.Read"/>.</summary>
    internal SoundFault? Read(Span<float> frame, out DateTimeOffset at)
    {
        at = default;
        DateTimeOffset began = default;
        long asked = time.GetTimestamp();
        TimeSpan patience = running ? Patience.Running : Patience.Starting;
        int have = 0;
        while (have < SoundFrame.Samples)
        {
            if (count == 0 && !NextPacket())
            {
                TimeSpan left = patience - time.GetElapsedTime(asked);
                if (left <= TimeSpan.Zero)
                {
                    return Patience.Over(device);
                }

                source.Wait(left);
                continue;
            }

            began = have == 0 ? restAt : began;
            int taken = Math.Min(count, SoundFrame.Samples - have);
            rest.AsSpan(from, taken).CopyTo(frame[have..]);
            (from, count, have, restAt) = (from + taken, count - taken, have + taken, restAt + SampleTime.Of(taken));
        }

        running = true;
        at = clock.Stamp(began, SoundFrame.Samples);
        return null;
    }

    private bool NextPacket()
    {
        int samples = source.Take(rest);
        (from, count, restAt) = (0, Math.Min(samples, rest.Length), time.GetLocalNow() - SampleTime.Of(samples));
        return samples > 0;
    }
}
