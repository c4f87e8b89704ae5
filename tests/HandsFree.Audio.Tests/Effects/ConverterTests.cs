using HandsFree.Audio.Effects;
using HandsFree.Audio.Levels;
using HandsFree.Audio.Tests.Signals;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Effects;

public sealed class ConverterTests
{
    // A sine of twice full scale is above it while |sin| > 1/2: two thirds of the time.
    [Fact]
    public void A_sine_driven_6_dB_over_full_scale_is_cut_off_two_thirds_of_the_time()
    {
        float[] clipped = Converter.Clip(Signal.Sine(97, 16_000, 1, 0.3), 20 * Math.Log10(2));

        clipped.Max().ShouldBe(1);
        ((double)clipped.Count(sample => Math.Abs(sample) == 1) / clipped.Length).ShouldBe(2.0 / 3, 0.01);
    }

    [Theory]
    [InlineData(-40)]
    [InlineData(-20)]
    public void Speech_comes_to_its_level(double dbfs)
    {
        float[] speech = [.. new float[8_000], .. Signal.Sine(300, 16_000, 2, 0.3), .. new float[8_000]];

        SpeechLevel.ActiveDbfs(Converter.AtLevel(speech, dbfs)).ShouldBe(dbfs, 0.01);
    }

    // The RMS of a sine at full scale is -3.01 dBFS: at 0 dBFS its peak would be the square root of 2, and it is cut off a half of the time.
    [Fact]
    public void At_0_dBFS_a_sine_is_cut_off_half_of_the_time()
    {
        float[] loud = Converter.AtLevel(Signal.Sine(97, 16_000, 1, 0.3), 0);

        ((double)loud.Count(sample => Math.Abs(sample) == 1) / loud.Length).ShouldBe(0.5, 0.01);
    }

    [Fact]
    public void An_offset_moves_the_mean_and_full_scale_stays_the_end()
    {
        Converter.Offset(Signal.Sine(100, 16_000, 1, 0.5), 0.1).Average().ShouldBe(0.1f, 1e-4f);
        Converter.Offset([0.95f, -0.95f], 0.1).ShouldBe([1, -0.85f], 1e-6);
    }

    [Fact]
    public void Silence_stays_silence() => Converter.Clip(new float[10], 12).ShouldBe(new float[10]);
}
