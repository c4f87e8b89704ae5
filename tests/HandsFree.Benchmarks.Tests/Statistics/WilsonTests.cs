using HandsFree.Benchmarks.Statistics;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Statistics;

public sealed class WilsonTests
{
    // Newcombe 1998, Two-sided confidence intervals for the single proportion, Statistics in Medicine 17:857, table I, method 3 (from memory).
    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0.0000, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    public void The_interval_is_that_of_Newcombes_table(int some, int all, double low, double high)
    {
        var interval = Wilson.Interval(some, all);

        interval.Low.ShouldBe(low, 0.00005);
        interval.High.ShouldBe(high, 0.00005);
    }

    // The score interval of 0 in n ends at z²/(n + z²).
    [Fact]
    public void None_of_300_proves_no_more_than_1_3_percent() => Wilson.Interval(0, 300).High.ShouldBe(1.959964 * 1.959964 / (300 + (1.959964 * 1.959964)), 1e-9);

    [Fact]
    public void All_is_the_mirror_of_none()
    {
        var (low, high) = Wilson.Interval(20, 20);

        low.ShouldBe(1 - 0.1611, 0.00005);
        high.ShouldBe(1, 1e-12);
    }

    [Fact]
    public void Without_recordings_nothing_is_known() => Wilson.Interval(0, 0).ShouldBe((0, 1));
}
