using HandsFree.Audio.Levels;
using HandsFree.Audio.Noise;
using HandsFree.Audio.Tests.Signals;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Noise;

public sealed class NoiseTests
{
    [Fact]
    public void The_same_seed_gives_the_same_noise_and_another_seed_another()
    {
        PinkNoise.Make(1_000, 4, -40).ShouldBe(PinkNoise.Make(1_000, 4, -40));
        PinkNoise.Make(1_000, 4, -40).ShouldNotBe(PinkNoise.Make(1_000, 5, -40));
        LevelMeter.RmsDbfs(PinkNoise.Make(1_000, 4, -40)).ShouldBe(-40, 0.001);
    }

    [Fact]
    public void Pink_noise_has_the_same_power_in_every_octave_from_60_Hz_to_6_kHz()
    {
        float[] noise = PinkNoise.Make(1 << 15, 11, -20);
        double reference = OctavePower(noise, 480);
        foreach (double low in new[] { 60.0, 120, 240, 960, 1_920, 3_000 })
        {
            (10 * Math.Log10(OctavePower(noise, low) / reference)).ShouldBe(0, 1.5, $"{low} Hz to {2 * low} Hz");
        }
    }

    [Fact]
    public void White_noise_has_mean_0_and_deviation_1()
    {
        float[] noise = WhiteNoise.Make(100_000, 3);

        noise.Average().ShouldBe(0f, 0.02f);
        Signal.Rms(noise).ShouldBe(1, 0.01);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(10)]
    [InlineData(0)]
    public void The_ratio_is_that_of_the_speech_without_its_pauses(double snr)
    {
        float[] speech = [.. new float[32_000], .. Signal.Sine(300, 16_000, 3, peak: 0.1), .. new float[32_000]];

        float[] mixed = Mixer.AddNoise(speech, PinkNoise.Make(5_000, 2, -33), snr);

        float[] added = [.. mixed.Select((sample, i) => sample - speech[i])];
        (SpeechLevel.ActiveDbfs(speech) - LevelMeter.RmsDbfs(added)).ShouldBe(snr, 0.01);
    }

    [Fact]
    public void A_sum_over_full_scale_is_made_softer_as_a_whole()
    {
        float[] mixed = Mixer.AddNoise(Signal.Sine(300, 16_000, 1, peak: 1), WhiteNoise.Make(16_000, 1), 0);

        mixed.Max(Math.Abs).ShouldBe(0.99f, 1e-4f);
    }

    [Fact]
    public void Silent_noise_under_speech_is_refused() =>
        Should.Throw<ArgumentException>(() => Mixer.AddNoise([0.5f, 0.5f], [], 10));

    [Fact]
    public void No_speech_stays_no_speech() => Mixer.AddNoise([], [0.1f], 10).ShouldBeEmpty();

    /// <summary>Power between a frequency and its double, by the discrete Fourier sums of 1024-sample pieces.</summary>
    private static double OctavePower(float[] noise, double low)
    {
        const int Piece = 1_024;
        double power = 0;
        for (int at = 0; at + Piece <= noise.Length; at += Piece)
        {
            for (int bin = (int)Math.Ceiling(low * Piece / 16_000); bin < 2 * low * Piece / 16_000; bin++)
            {
                double amplitude = Signal.Component(noise.AsSpan(at, Piece), 0, Piece, bin * 16_000.0 / Piece, 16_000).Amplitude;
                power += amplitude * amplitude;
            }
        }

        return power;
    }
}
