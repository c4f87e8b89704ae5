using HandsFree.Benchmarks.Statistics;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Statistics;

public sealed class CalibrationTests
{
    // Worked example of Pavlovic 2025, Understanding model calibration (blog track of ICLR, from memory): nine predictions in five bins give
    // 2/9 × 0.045 + 4/9 × 0.0625 + 3/9 × 0.2 = 0.1044.
    private static readonly Prediction[] Nine =
    [
        new(0.78, true), new(0.64, true), new(0.92, false), new(0.58, true), new(0.51, false),
        new(0.85, true), new(0.70, true), new(0.63, false), new(0.83, true),
    ];

    [Fact]
    public void The_expected_error_is_that_of_the_worked_example() =>
        Calibration.ExpectedError(Nine, 5).ShouldBe((2 * 0.045 + 4 * 0.0625 + 3 * 0.2) / 9, 1e-12);

    [Fact]
    public void The_bins_are_those_of_the_worked_example()
    {
        IReadOnlyList<ReliabilityBin> bins = Calibration.Bins(Nine, 5);

        bins.Select(b => (b.Count, b.Right)).ShouldBe([(2, 1), (4, 3), (3, 2)]);
        bins.Select(b => b.MeanProbability).ShouldBe([0.545, 0.6875, 2.6 / 3], 1e-12);
    }

    // Brier 1950, Monthly Weather Review 78:1, table 1 (from memory): ten forecasts of rain or no rain; his score, the sum over both classes, is 0.19,
    // twice the one for rain alone.
    [Fact]
    public void The_score_is_half_of_Briers_own_example()
    {
        (double Rain, bool Came)[] forecasts =
        [
            (0.7, false), (0.9, true), (0.8, true), (0.4, true), (0.2, false), (0.0, false), (0.0, false), (0.0, false), (0.0, false), (0.1, false),
        ];

        (2 * Calibration.Brier([.. forecasts.Select(f => new Prediction(f.Rain, f.Came))])).ShouldBe(0.19, 1e-9);
    }

    [Theory]
    [InlineData(1, true, 0)]
    [InlineData(1, false, 1)]
    [InlineData(0.7, true, 0.09)]
    [InlineData(0.5, false, 0.25)]
    public void One_forecast_scores_its_squared_distance(double probability, bool right, double score) =>
        Calibration.Brier([new(probability, right)]).ShouldBe(score, 1e-12);

    [Fact]
    public void What_comes_true_as_often_as_stated_has_no_error() =>
        Calibration.ExpectedError([.. Enumerable.Range(0, 10).Select(i => new Prediction(0.7, i < 7))], 10).ShouldBe(0, 1e-12);

    [Fact]
    public void Each_edge_belongs_to_the_bin_below_it()
    {
        Calibration.Bins([new(0, false), new(0.1, false), new(0.1001, false), new(1, true)], 10).Select(b => (b.Low, b.Count)).ShouldBe([(0, 2), (0.1, 1), (0.9, 1)]);
    }

    [Fact]
    public void Without_predictions_there_is_no_number()
    {
        Calibration.Brier([]).ShouldBe(double.NaN);
        Calibration.ExpectedError([], 10).ShouldBe(double.NaN);
    }
}
