namespace HandsFree.Audio.Devices.Alsa;

/// <summary>Sound to an ALSA device.</summary>
internal sealed class AlsaPlayback(AlsaStream stream) : IPlaybackStream
{
    /// <inheritdoc/>
    public string Device => stream.Device;

    /// <inheritdoc/>
    public TimeSpan Latency => stream.Delay ?? SoundFrame.Duration * 3;

    /// <inheritdoc/>
    public SoundFault? Write(ReadOnlySpan<float> frame)
    {
        while (frame.Length > 0)
        {
            nint written = AlsaNative.snd_pcm_writei(stream.Handle, frame, (nuint)frame.Length);
            if (written >= 0)
            {
                frame = frame[(int)written..];
            }
            else if (written != AlsaFaults.BrokenPipe || AlsaNative.snd_pcm_recover(stream.Handle, (int)written, 1) < 0)
            {
                return AlsaFaults.Of((int)written, Device); // a device that ran dry between two texts is no fault
            }
        }

        return null;
    }

    /// <inheritdoc/>
    public void Flush()
    {
        _ = AlsaNative.snd_pcm_drop(stream.Handle); // what went wrong shows with the next frame
        _ = AlsaNative.snd_pcm_prepare(stream.Handle);
    }

    /// <inheritdoc/>
    public SoundFault? Look() =>
        AlsaNative.snd_pcm_avail_update(stream.Handle) is var room && room < 0 && room != AlsaFaults.BrokenPipe
            ? AlsaFaults.Of((int)room, Device)
            : null;

    /// <inheritdoc/>
    public void Dispose() => stream.Dispose();
}
