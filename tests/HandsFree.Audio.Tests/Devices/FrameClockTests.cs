using HandsFree.Audio.Devices;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Devices;

public sealed class FrameClockTests
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 3, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Late_wake_ups_do_not_shake_the_times()
    {
        FrameClock clock = new();
        Random random = new(7);
        DateTimeOffset before = clock.Stamp(Noon, SoundFrame.Samples);
        for (int i = 1; i < 500; i++)
        {
            DateTimeOffset at = clock.Stamp(Noon + (i * SoundFrame.Duration) + TimeSpan.FromMilliseconds(random.NextDouble() * 40), SoundFrame.Samples);
            (at - before).TotalMilliseconds.ShouldBeInRange(19, 21.3);
            before = at;
        }

        clock.Jumps.ShouldBe(0);
    }

    [Fact]
    public void A_device_whose_clock_is_slow_is_followed()
    {
        // 200 parts in a million: more than the sound cards of any book (common practice, no source).
        FrameClock clock = new();
        DateTimeOffset at = Noon;
        DateTimeOffset reported = Noon;
        for (int i = 0; i < 50_000; i++)
        {
            reported = Noon + (i * SoundFrame.Duration * 1.0002);
            at = clock.Stamp(reported, SoundFrame.Samples);
        }

        (reported - at).Duration().TotalMilliseconds.ShouldBeLessThan(1);
        clock.Jumps.ShouldBe(0);
    }

    [Fact]
    public void Lost_sound_is_a_jump()
    {
        FrameClock clock = new();
        clock.Stamp(Noon, SoundFrame.Samples);
        DateTimeOffset later = Noon + TimeSpan.FromMilliseconds(200);
        clock.Stamp(later, SoundFrame.Samples).ShouldBe(later);
        clock.Jumps.ShouldBe(1);
    }
}
