using HandsFree.App.Checks;
using HandsFree.Audio.Levels;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Checks;

/// <summary>A recording brought to a level and a noise, and what it is called.</summary>
public sealed class LevelWordsTests
{
    [Theory]
    [InlineData(-20, -80, "good")]
    [InlineData(-50, -90, "too quiet")]
    [InlineData(-20, -26, "too noisy")]
    [InlineData(2, -80, "too loud")]
    public void A_level_is_said_in_words(double speechDbfs, double noiseDbfs, string words)
    {
        float[] speech = BundledClip.Read().Samples;
        Gain.ToRms(speech, speechDbfs);
        Random random = new(5);
        float noise = (float)(LevelMeter.ToAmplitude(noiseDbfs) * Math.Sqrt(12));
        float[] both = [.. speech.Select(s => Math.Clamp(s + (noise * (float)(random.NextDouble() - 0.5)), -1, 1))];

        (CheckState state, string text) = LevelWords.Of(both);

        text.ShouldStartWith(words);
        state.ShouldBe(words == "good" ? CheckState.Ok : CheckState.Warning);
    }

    [Theory]
    [InlineData(-120, 0)]
    [InlineData(-30, 15)]
    [InlineData(0, 30)]
    public void The_meter_goes_from_60_below_to_full_scale(double dbfs, int signs) => LevelWords.Meter(dbfs).Count(s => s == '#').ShouldBe(signs);
}
