using HandsFree.Audio.Devices;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Devices;

public sealed class TimedSoundTests
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 3, 12, 0, 0, TimeSpan.Zero);

    // Three frames, and 100 ms lost before the last one.
    private readonly TimedSound sound = new(
        [.. new float[700], 0.5f, .. new float[(3 * SoundFrame.Samples) - 701]],
        [Noon, Noon.AddMilliseconds(20), Noon.AddMilliseconds(140)]);

    [Fact]
    public void A_position_and_its_time_belong_together_over_a_gap()
    {
        sound.TimeOf(320).ShouldBe(Noon.AddMilliseconds(20));
        sound.TimeOf(656).ShouldBe(Noon.AddMilliseconds(141));
        sound.PositionOf(Noon.AddMilliseconds(141)).ShouldBe(640);
        sound.PositionOf(Noon.AddMilliseconds(100)).ShouldBe(320);
        sound.PositionOf(Noon.AddSeconds(-1)).ShouldBe(0);
    }

    [Fact]
    public void The_first_sound_after_a_moment_is_found()
    {
        sound.FirstSound(Noon, 0.4f).ShouldBe(Noon.AddMilliseconds(140) + SampleTime.Of(60));
        sound.FirstSound(Noon.AddMilliseconds(150), 0.4f).ShouldBeNull();
    }
}
