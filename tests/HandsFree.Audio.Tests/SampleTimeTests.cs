using FsCheck;
using FsCheck.Xunit;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests;

public sealed class SampleTimeTests
{
    [Fact]
    public void Sixteen_samples_are_a_millisecond()
    {
        SampleTime.Of(16).ShouldBe(TimeSpan.FromMilliseconds(1));
        SampleTime.Samples(TimeSpan.FromSeconds(0.4)).ShouldBe(6_400);
    }

    [Property]
    public void Samples_to_time_and_back_are_exact(NonNegativeInt samples) =>
        SampleTime.Samples(SampleTime.Of(samples.Get)).ShouldBe(samples.Get);
}
