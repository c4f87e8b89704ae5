using HandsFree.Audio.Levels;
using HandsFree.Audio.Noise;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Levels;

public sealed class SpeechToNoiseTests
{
    [Theory]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(15)]
    [InlineData(25)]
    public void Bursts_in_steady_noise_are_measured_as_they_were_mixed(double snr)
    {
        float[] bursts = Bursts();
        float[] mixed = Mixer.AddNoise(bursts, PinkNoise.Make(bursts.Length, 3, -30), snr);
        SpeechToNoise.Decibels(mixed).ShouldBe(snr, 3.5);
    }

    [Fact]
    public void Noise_alone_stands_out_little_and_no_noise_is_the_most()
    {
        SpeechToNoise.Decibels(PinkNoise.Make(32_000, 3, -30)).ShouldBeLessThan(6);
        SpeechToNoise.Decibels(new float[16_000]).ShouldBe(0);
        float[] faint = Bursts();
        for (int i = 0; i < faint.Length; i++)
        {
            faint[i] += i % 2 == 0 ? 1e-5f : -1e-5f;
        }

        SpeechToNoise.Decibels(faint).ShouldBe(SpeechToNoise.Most);
    }

    /// <summary>Half a second of tone, half a second of nothing, four times.</summary>
    private static float[] Bursts() =>
        [.. Enumerable.Range(0, 64_000).Select(i => i / 8_000 % 2 == 1 ? 0.2f * MathF.Sin(2 * MathF.PI * 300 * i / 16_000) : 0)];
}
