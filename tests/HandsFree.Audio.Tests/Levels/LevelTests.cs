using HandsFree.Audio.Levels;
using HandsFree.Audio.Noise;
using HandsFree.Audio.Tests.Signals;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Levels;

public sealed class LevelTests
{
    [Fact]
    public void A_full_sine_has_a_peak_of_0_and_an_RMS_of_minus_3_01_dBFS()
    {
        Level level = LevelMeter.Measure(Signal.Sine(1_000, 16_000, 1, peak: 1));

        level.PeakDbfs.ShouldBe(0, 0.001);
        level.RmsDbfs.ShouldBe(-3.0103, 0.001);
    }

    [Fact]
    public void Silence_measures_minus_120_dBFS()
    {
        LevelMeter.Measure(new float[100]).ShouldBe(new Level(-120, -120, 0));
        LevelMeter.Measure([]).ShouldBe(new Level(-120, -120, 0));
        SpeechLevel.ActiveDbfs(new float[16_000]).ShouldBe(-120);
        SpeechLevel.ActiveDbfs([]).ShouldBe(-120);
    }

    [Fact]
    public void Three_samples_in_a_row_at_full_scale_are_clipped_and_two_are_not()
    {
        LevelMeter.Measure([0, 1, 1, 0, 0, 0, -1, -1, -1, 0]).ClippedShare.ShouldBe(0.3);
        LevelMeter.Measure([1, 1, 0, 1, 1]).ClippedShare.ShouldBe(0);
        LevelMeter.Measure([1, 1, 1, 1, 0.5f]).ClippedShare.ShouldBe(0.8);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(10)]
    public void Pauses_do_not_change_the_level_of_speech(double pauseSeconds)
    {
        float[] speech = Signal.Sine(300, 16_000, 2, peak: 0.1);
        float[] pause = PinkNoise.Make((int)(16_000 * pauseSeconds), 5, -70);

        double level = SpeechLevel.ActiveDbfs([.. pause, .. speech, .. pause]);

        // The hang-over of 200 ms counts as speech: 0.41 dB on 2 s.
        level.ShouldBe(LevelMeter.RmsDbfs(speech), 0.45);
    }

    [Fact]
    public void Gain_brings_noise_to_a_level_and_leaves_silence_alone()
    {
        float[] noise = WhiteNoise.Make(16_000, 1);
        Gain.ToRms(noise, -30);
        LevelMeter.RmsDbfs(noise).ShouldBe(-30, 0.001);

        float[] silence = new float[10];
        Gain.ToRms(silence, -30);
        silence.ShouldAllBe(sample => sample == 0);
    }
}
