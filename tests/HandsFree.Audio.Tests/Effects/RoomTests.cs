using HandsFree.Audio.Effects;
using HandsFree.Audio.Levels;
using HandsFree.Audio.Tests.Signals;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Effects;

public sealed class RoomTests
{
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.6)]
    [InlineData(1.2)]
    public void The_reverberation_time_measured_as_ISO_3382_does_is_the_one_asked_for(double seconds)
    {
        float[] response = new Room(seconds, 0, 5).ImpulseResponse();

        // ISO 3382-1 gives 5 % as the just noticeable difference (from memory).
        MeasuredTime(response).ShouldBe(seconds, 0.05 * seconds);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(0)]
    [InlineData(-6)]
    public void Direct_sound_and_reverberation_have_the_ratio_asked_for(double decibel)
    {
        float[] response = new Room(0.5, decibel, 5).ImpulseResponse();

        response[0].ShouldBe(1);
        double tail = response.Skip(1).Sum(sample => (double)sample * sample);
        (-10 * Math.Log10(tail)).ShouldBe(decibel, 0.001);
    }

    [Fact]
    public void The_same_seed_gives_the_same_room_and_another_seed_another()
    {
        new Room(0.2, 0, 5).ImpulseResponse().ShouldBe(new Room(0.2, 0, 5).ImpulseResponse());
        new Room(0.2, 0, 5).ImpulseResponse().ShouldNotBe(new Room(0.2, 0, 6).ImpulseResponse());
    }

    [Fact]
    public void Speech_stays_as_loud_and_gets_a_tail()
    {
        float[] speech = Signal.Vowel(0.5, 0.3);

        float[] heard = new Room(0.4, 0, 5).Apply(speech);

        heard.Length.ShouldBe(speech.Length + 6_400 - 1);
        SpeechLevel.ActiveDbfs(heard).ShouldBe(SpeechLevel.ActiveDbfs(speech), 0.2);
        LevelMeter.RmsDbfs(heard.AsSpan(speech.Length, 800)).ShouldBeGreaterThan(LevelMeter.RmsDbfs(heard) - 30);
    }

    [Fact]
    public void A_room_without_time_is_refused() => Should.Throw<ArgumentOutOfRangeException>(() => new Room(0, 0, 1).ImpulseResponse());

    /// <summary>T30 of ISO 3382-1: the backward integrated squared response (Schroeder 1965), its regression line from -5 to -35 dB, drawn out to
    /// -60 dB.</summary>
    private static double MeasuredTime(float[] response)
    {
        double[] decay = new double[response.Length];
        double sum = 0;
        for (int i = response.Length - 1; i >= 0; i--)
        {
            sum += (double)response[i] * response[i];
            decay[i] = sum;
        }

        (double Time, double Level)[] points = [.. decay.Select((energy, i) => (i / 16_000.0, 10 * Math.Log10(energy / sum))).Where(p => p.Item2 is <= -5 and >= -35)];
        double meanTime = points.Average(p => p.Time);
        double meanLevel = points.Average(p => p.Level);
        double slope = points.Sum(p => (p.Time - meanTime) * (p.Level - meanLevel)) / points.Sum(p => Math.Pow(p.Time - meanTime, 2));
        return -60 / slope;
    }
}
