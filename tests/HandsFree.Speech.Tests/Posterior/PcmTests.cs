using HandsFree.Speech.Posterior;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Posterior;

public sealed class PcmTests
{
    [Fact]
    public void Samples_are_scaled_clipped_and_never_no_number() =>
        Pcm.To16Bits([0, 1, -1, 0.5f, 3, -3, float.NaN, float.PositiveInfinity])
            .ShouldBe(new short[] { 0, 32767, -32767, 16384, 32767, -32767, 0, 32767 });

    [Fact]
    public void A_full_square_wave_is_at_0_decibels() => Pcm.LoudestDecibels([.. Enumerable.Repeat(short.MaxValue, 3200)]).ShouldBe(0, 1e-9);

    [Fact]
    public void Silence_and_nothing_are_below_every_level()
    {
        Pcm.LoudestDecibels(new short[1600]).ShouldBe(double.NegativeInfinity);
        Pcm.LoudestDecibels([]).ShouldBe(double.NegativeInfinity);
    }

    [Fact]
    public void The_loudest_tenth_of_a_second_counts()
    {
        var samples = new short[16_000];
        Array.Fill(samples, (short)3277, 4800, 1600);
        Pcm.LoudestDecibels(samples).ShouldBe(-20, 0.01);
    }
}
