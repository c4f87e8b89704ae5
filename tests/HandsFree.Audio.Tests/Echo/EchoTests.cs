using HandsFree.Audio.Echo;
using HandsFree.Audio.Levels;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Echo;

public sealed class EchoTests
{
    private readonly float[] chirp = Chirp.Make();

    [Theory]
    [InlineData(0)]
    [InlineData(777)]
    [InlineData(12_345)]
    public void A_chirp_is_found_at_its_place_below_noise(int at)
    {
        Random random = new(3);
        float[] recording = new float[24_000];
        for (int i = 0; i < recording.Length; i++)
        {
            recording[i] = (float)((random.NextDouble() - 0.5) * 0.02);
        }

        // Twenty decibels down and turned over, as a loudspeaker may.
        for (int i = 0; i < chirp.Length; i++)
        {
            recording[at + i] -= chirp[i] * 0.1f;
        }

        (int position, double likeness) = EchoFinder.Find(recording, chirp);

        position.ShouldBe(at);
        likeness.ShouldBeGreaterThan(0.8);
    }

    [Fact]
    public void Noise_alone_is_not_alike()
    {
        Random random = new(4);
        float[] noise = [.. Enumerable.Range(0, 24_000).Select(_ => (float)(random.NextDouble() - 0.5))];

        EchoFinder.Find(noise, chirp).Likeness.ShouldBeLessThan(0.15);
        EchoFinder.Find(new float[24_000], chirp).Likeness.ShouldBe(0);
    }

    [Fact]
    public void The_chirp_has_its_length_and_level()
    {
        chirp.Length.ShouldBe(3_200);
        LevelMeter.Measure(chirp).PeakDbfs.ShouldBe(-12, 0.1);
    }
}
