namespace HandsFree.Audio.Devices;

/// <summary>The times of frames: they run with the samples, and follow what the device reports slowly, so that a late wake-up of the
/// program does not shake them. Where the device is ahead by more than a frame or two, sound was lost, and the time jumps.</summary>
public sealed class FrameClock
{
    /// <summary>A difference from here on is lost sound (or a clock that was set).</summary>
    public static readonly TimeSpan Jump = TimeSpan.FromMilliseconds(60);

    /// <summary>A frame takes over such a part of the difference.</summary>
    private const int Slowness = 32;

    private DateTimeOffset? next;

    /// <summary>How often the time jumped.</summary>
    public int Jumps { get; private set; }

    /// <summary>The time of a frame's first sample.</summary>
    /// <param name="reported">The device's own report of it.</param>
    /// <param name="samples">Samples of the frame.</param>
    public DateTimeOffset Stamp(DateTimeOffset reported, int samples)
    {
        DateTimeOffset at = next is { } expected ? Follow(expected, reported) : reported;
        next = at + SampleTime.Of(samples);
        return at;
    }

    private DateTimeOffset Follow(DateTimeOffset expected, DateTimeOffset reported)
    {
        TimeSpan difference = reported - expected;
        if (difference.Duration() < Jump)
        {
            return expected + (difference / Slowness);
        }

        Jumps++;
        return reported;
    }
}
