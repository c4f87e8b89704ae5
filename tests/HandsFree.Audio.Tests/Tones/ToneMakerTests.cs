using HandsFree.Audio.Tests.Signals;
using HandsFree.Audio.Tones;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Tones;

public sealed class ToneMakerTests
{
    [Theory]
    [InlineData(100, 1_600)]
    [InlineData(62.5, 1_000)]
    [InlineData(10, 160)]
    public void A_tone_has_exactly_the_samples_of_its_length(double milliseconds, int samples) =>
        ToneMaker.Make(880, TimeSpan.FromMilliseconds(milliseconds), -12).Length.ShouldBe(samples);

    [Fact]
    public void Its_middle_has_the_peak_and_the_frequency_asked_for()
    {
        float[] tone = ToneMaker.Make(1_000, TimeSpan.FromSeconds(0.2), -6);

        Signal.Component(tone, 160, 3_040, 1_000, 16_000).Amplitude.ShouldBe(Math.Pow(10, -6 / 20.0), 1e-3);
    }

    [Fact]
    public void It_begins_and_ends_at_zero_and_rises_over_its_edge()
    {
        float[] tone = ToneMaker.Make(1_000, TimeSpan.FromSeconds(0.1), 0, TimeSpan.FromMilliseconds(10));

        tone[0].ShouldBe(0);
        tone[^1].ShouldBe(0);
        tone.Take(40).Max(Math.Abs).ShouldBeLessThan(0.16f);
        tone.Skip(160).Take(100).Max(Math.Abs).ShouldBeGreaterThan(0.99f);
    }

    [Fact]
    public void Values_out_of_range_are_refused()
    {
        TimeSpan length = TimeSpan.FromSeconds(0.1);
        Should.Throw<ArgumentOutOfRangeException>(() => ToneMaker.Make(0, length, -6));
        Should.Throw<ArgumentOutOfRangeException>(() => ToneMaker.Make(8_000, length, -6));
        Should.Throw<ArgumentOutOfRangeException>(() => ToneMaker.Make(440, length, 1));
        Should.Throw<ArgumentOutOfRangeException>(() => ToneMaker.Make(440, length, -6, edge: length));
    }
}
