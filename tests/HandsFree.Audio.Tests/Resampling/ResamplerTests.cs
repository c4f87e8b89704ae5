using FsCheck.Xunit;
using HandsFree.Audio.Resampling;
using HandsFree.Audio.Tests.Signals;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Resampling;

public sealed class ResamplerTests
{
    private const int From = 1_000;
    private const int To = 15_000;

    [Theory]
    [InlineData(48_000, 9_000)]
    [InlineData(48_000, 10_000)]
    [InlineData(48_000, 15_000)]
    [InlineData(44_100, 9_000)]
    [InlineData(44_100, 20_000)]
    [InlineData(32_000, 9_000)]
    [InlineData(22_050, 9_000)]
    public void A_tone_above_8_kHz_is_gone_and_not_folded_down(int rate, double hertz)
    {
        float[] result = Resampler.To16Kilohertz(Signal.Sine(hertz, rate, 1), rate);

        DecibelOf(Signal.Rms(result.AsSpan(From..To)) * Math.Sqrt(2)).ShouldBeLessThan(-90);
    }

    [Theory]
    [InlineData(48_000)]
    [InlineData(44_100)]
    [InlineData(32_000)]
    [InlineData(24_000)]
    [InlineData(22_050)]
    public void The_band_up_to_7_kHz_keeps_its_level_and_its_place_in_time(int rate)
    {
        foreach (double hertz in new[] { 100.0, 1_000, 3_400, 7_000 })
        {
            float[] result = Resampler.To16Kilohertz(Signal.Sine(hertz, rate, 1), rate);

            (double amplitude, double phase) = Signal.Component(result, From, To, hertz, 16_000);
            DecibelOf(amplitude).ShouldBe(0, 0.02, $"{hertz} Hz");
            (phase / (2 * Math.PI * hertz) * 16_000).ShouldBe(0, 0.01, $"samples of delay at {hertz} Hz");
        }
    }

    [Theory]
    [InlineData(8_000, 3_400)]
    [InlineData(11_025, 4_500)]
    [InlineData(12_000, 5_000)]
    public void From_a_lower_rate_the_band_is_kept_and_no_mirror_image_appears(int rate, double hertz)
    {
        float[] result = Resampler.To16Kilohertz(Signal.Sine(hertz, rate, 1), rate);

        DecibelOf(Signal.Component(result, From, To, hertz, 16_000).Amplitude).ShouldBe(0, 0.05);
        double image = rate - hertz;
        DecibelOf(Signal.Component(result, From, To, image, 16_000).Amplitude).ShouldBeLessThan(-80);
    }

    [Property]
    public void Sixteen_kilohertz_pass_bit_for_bit(float[] samples) =>
        Resampler.To16Kilohertz(samples, 16_000).ShouldBe(samples);

    [Property(MaxTest = 50)]
    public void The_length_in_time_is_kept(int seed)
    {
        Random random = new(seed);
        int rate = random.Next(8_000, 48_001);
        int length = random.Next(0, 20_000);

        int result = Resampler.To16Kilohertz(new float[length], rate).Length;

        result.ShouldBe((int)Math.Round(length * 16_000.0 / rate, MidpointRounding.AwayFromZero));
    }

    [Theory]
    [InlineData(48_000)]
    [InlineData(44_100)]
    [InlineData(8_000)]
    [InlineData(16_000)]
    public void Piece_by_piece_gives_what_the_whole_gives(int rate)
    {
        float[] samples = Signal.Sine(700, rate, 0.7);
        float[] whole = Resampler.To16Kilohertz(samples, rate);
        List<float> pieces = [];
        Resampler resampler = new(rate);
        Random random = new(7);
        for (int at = 0; at < samples.Length;)
        {
            int count = Math.Min(random.Next(0, 900), samples.Length - at);
            resampler.Feed(samples.AsSpan(at, count), pieces);
            at += count;
        }

        resampler.Flush(pieces);

        pieces.Count.ShouldBe(whole.Length);
        for (int i = 0; i < whole.Length; i++)
        {
            pieces[i].ShouldBe(whole[i], 1e-5f);
        }
    }

    [Fact]
    public void At_most_16_ms_are_held_back()
    {
        foreach (int rate in new[] { 8_000, 22_050, 48_000 })
        {
            List<float> output = [];
            new Resampler(rate).Feed(new float[rate], output);

            output.Count.ShouldBeInRange(16_000 - (16 * 17), 16_000);
        }
    }

    [Theory]
    [InlineData(7_999)]
    [InlineData(48_001)]
    public void A_rate_outside_8_to_48_kHz_is_refused(int rate) =>
        Should.Throw<ArgumentOutOfRangeException>(() => new Resampler(rate));

    private static double DecibelOf(double amplitude) => 20 * Math.Log10(Math.Max(amplitude, 1e-12) / 0.5);
}
