using HandsFree.Benchmarks.Statistics;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Statistics;

/// <summary>Definition 7 of Hyndman and Fan 1996, which is R's default: quantile(1:10) is 1, 3.25, 5.5, 7.75, 10.</summary>
public sealed class QuantileTests
{
    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.25, 3.25)]
    [InlineData(0.5, 5.5)]
    [InlineData(0.75, 7.75)]
    [InlineData(1, 10)]
    public void One_to_ten(double share, double expected) =>
        Quantile.Of([10, 2, 8, 4, 6, 1, 3, 5, 7, 9], share).ShouldBe(expected, 1e-12);

    [Fact]
    public void Of_nothing_there_is_none() => Quantile.Of([], 0.5).ShouldBe(double.NaN);
}
