namespace HandsFree.Audio.Devices.Alsa;

/// <summary>Sound from an ALSA device.</summary>
internal sealed class AlsaCapture(AlsaStream stream, TimeProvider time) : ICaptureStream
{
    private readonly FrameClock clock = new();
    private bool running;

    /// <inheritdoc/>
    public string Device => stream.Device;

    /// <inheritdoc/>
    public SoundFault? Read(Span<float> frame, out DateTimeOffset at)
    {
        at = default;
        int have = 0;
        long asked = time.GetTimestamp();
        TimeSpan patience = running ? Patience.Running : Patience.Starting;
        while (have < SoundFrame.Samples)
        {
            // The time since the last frame decides: a device may say "ready", or lose and recover, for ever.
            TimeSpan left = patience - time.GetElapsedTime(asked);
            int ready = left <= TimeSpan.Zero ? 0 : AlsaNative.snd_pcm_wait(stream.Handle, Math.Max(1, (int)left.TotalMilliseconds));
            if (ready == 0)
            {
                return Patience.Over(Device);
            }

            nint read = ready < 0 ? ready : AlsaNative.snd_pcm_readi(stream.Handle, frame[have..], (nuint)(SoundFrame.Samples - have));
            if (read >= 0)
            {
                have += (int)read;
                continue;
            }

            // The program was too slow and sound was lost: begin again; the times show the gap. Anything else is the end.
            if (read != AlsaFaults.BrokenPipe || AlsaNative.snd_pcm_recover(stream.Handle, (int)read, 1) < 0 || AlsaNative.snd_pcm_start(stream.Handle) < 0)
            {
                return AlsaFaults.Of((int)read, Device);
            }

            have = 0;
        }

        running = true;
        at = clock.Stamp(time.GetLocalNow() - SoundFrame.Duration - (stream.Delay ?? TimeSpan.Zero), SoundFrame.Samples);
        return null;
    }

    /// <inheritdoc/>
    public void Dispose() => stream.Dispose();
}
