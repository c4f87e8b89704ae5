using HandsFree.Benchmarks.Statistics;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Statistics;

public sealed class DifferenceOfSharesTests
{
    // Newcombe 1998, Interval estimation for the difference between independent proportions, Statistics in Medicine 17:873, table II,
    // method 10 (from memory).
    [Theory]
    [InlineData(56, 70, 48, 80, 0.0524, 0.3339)]
    [InlineData(9, 10, 3, 10, 0.1705, 0.8090)]
    [InlineData(10, 10, 0, 10, 0.6075, 1.0000)]
    public void The_interval_is_that_of_Newcombes_table(int some1, int all1, int some2, int all2, double low, double high)
    {
        var interval = DifferenceOfShares.Interval(some1, all1, some2, all2);

        interval.Low.ShouldBe(low, 0.00005);
        interval.High.ShouldBe(high, 0.00005);
    }
}
