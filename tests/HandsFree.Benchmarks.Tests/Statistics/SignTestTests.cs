using HandsFree.Benchmarks.Statistics;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Statistics;

public sealed class SignTestTests
{
    // Fay 2010, Two-sided exact tests and matching confidence intervals for discrete data, The R Journal 2/1: the example of McNemar's exact
    // test has 9 and 2 discordant pairs and p = 0.06543 (from memory; 2 (1 + 11 + 55) / 2048 by hand).
    [Theory]
    [InlineData(9, 2)]
    [InlineData(2, 9)]
    public void Nine_against_two_is_Fays_example(int onlyFirst, int onlySecond) => SignTest.Probability(onlyFirst, onlySecond).ShouldBe(134.0 / 2048, 1e-12);

    // Siegel 1956, Nonparametric statistics, table D (one-tailed, from memory): N = 10, x = 1: .011; N = 14, x = 3: .029; N = 20, x = 5: .021.
    [Theory]
    [InlineData(1, 9, 0.011)]
    [InlineData(3, 11, 0.029)]
    [InlineData(5, 15, 0.021)]
    public void One_tail_is_that_of_Siegels_table(int fewer, int more, double tail) => (SignTest.Probability(fewer, more) / 2).ShouldBe(tail, 0.0005);

    // Agresti 1990, Categorical data analysis, section 10.1: 150 and 86 changed their opinion, McNemar's z = -4.17; two-sided p = 0.00003.
    [Fact]
    public void Many_pairs_come_near_the_normal_approximation() => SignTest.Probability(86, 150).ShouldBe(3.7e-5, 0.7e-5);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(0, 1)]
    public void So_few_pairs_show_nothing(int onlyFirst, int onlySecond) => SignTest.Probability(onlyFirst, onlySecond).ShouldBe(1, 1e-12);
}
