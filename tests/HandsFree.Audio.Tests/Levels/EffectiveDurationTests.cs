using HandsFree.Audio.Levels;
using HandsFree.Audio.Noise;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Levels;

public sealed class EffectiveDurationTests
{
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.2)]
    [InlineData(1)]
    public void A_steady_tone_lasts_as_long_as_it_sounds(double seconds) => EffectiveDuration.Seconds(Tone(seconds)).ShouldBe(seconds, 0.012);

    [Theory]
    [InlineData(0.02)]
    [InlineData(0.2)]
    public void In_noise_below_it_too(double seconds)
    {
        float[] noise = PinkNoise.Make(32_000, 3, -40);
        EffectiveDuration.Seconds([.. Tone(seconds).Zip(noise, (a, b) => a + b)]).ShouldBe(seconds, 0.02);
    }

    [Fact]
    public void Silence_nothing_and_what_is_no_number_last_no_time()
    {
        EffectiveDuration.Seconds([]).ShouldBe(0);
        EffectiveDuration.Seconds(new float[16_000]).ShouldBe(0);
        EffectiveDuration.Seconds([.. Enumerable.Repeat(float.NaN, 16_000)]).ShouldBe(0);
    }

    private static float[] Tone(double seconds) => [.. Enumerable.Range(0, 32_000).Select(i =>
        (i >= 16_000 && i < 16_000 + (seconds * 16_000) ? 0.2f * MathF.Sin(2 * MathF.PI * 300 * i / 16_000) : 0) + (i % 2 == 0 ? 1e-5f : -1e-5f))];
}
