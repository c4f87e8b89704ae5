using HandsFree.Benchmarks.Calibrating;
using HandsFree.Speech.Posterior;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Calibrating;

public sealed class LogisticModelTests
{
    private static readonly LogisticModel Model = new(
        new Dictionary<string, double> { [Facts.Score] = 0.5 }, new Dictionary<string, double> { [Facts.Bias] = 0 });

    [Fact]
    public void The_weights_that_made_the_rows_are_found_again()
    {
        const double Score = 0.8, Bias = -1.5;
        var random = new Random(1);
        EvidenceRow[] rows = [.. Enumerable.Range(0, 4000).Select(_ => Drawn(random, Score, Bias))];
        double[] weights = Model.Fit(rows);
        weights[0].ShouldBe(Score, 0.1);
        weights[1].ShouldBe(Bias, 0.25);
    }

    [Fact]
    public void Nothing_to_learn_from_leaves_the_weights_where_they_start() => Model.Fit([]).ShouldBe([0.5, 0]);

    [Fact]
    public void A_row_is_decided_as_the_product_decides_it()
    {
        PosteriorParameters parameters = Model.Parameters([1, 0], 0.7, []);
        Judged judged = Judged.Of(Row([2, 1], 1), parameters);
        judged.Probability.ShouldBe(Math.Exp(2) / (Math.Exp(2) + Math.Exp(1) + 1), 1e-12); // by hand
        judged.Best!.Right.ShouldBeFalse();
        judged.Wrong(0.6).ShouldBeTrue();
        judged.Wrong(0.7).ShouldBeFalse();
        judged.Again(0.7).ShouldBeTrue();
    }

    [Fact]
    public void Equations_are_solved()
    {
        // 2x + y = 5 and x + 3y = 10: x = 1, y = 3; the zero on the diagonal needs the exchange of rows.
        LinearSystem.Solve(new double[,] { { 2, 1 }, { 1, 3 } }, [5, 10]).ShouldBe([1, 3], 1e-12);
        LinearSystem.Solve(new double[,] { { 0, 1 }, { 2, 0 } }, [3, 4]).ShouldBe([2, 3], 1e-12);
    }

    /// <summary>Two values with scores by chance; which of them was said, or neither, is drawn as the weights say.</summary>
    private static EvidenceRow Drawn(Random random, double score, double bias)
    {
        double[] scores = [6 * (random.NextDouble() - 0.5), 6 * (random.NextDouble() - 0.5)];
        double[] weights = [Math.Exp(bias), .. scores.Select(s => Math.Exp(score * s))];
        double at = random.NextDouble() * weights.Sum();
        int truth = at < weights[0] ? 0 : at < weights[0] + weights[1] ? 1 : 2;
        return Row(scores, truth - 1);
    }

    private static EvidenceRow Row(double[] scores, int right) => new()
    {
        Condition = "clean",
        Set = "set",
        File = "file",
        Speaker = "speaker",
        State = "readings",
        Words = "words",
        IsSentence = true,
        Transcript = "",
        Facts = new Dictionary<string, double> { [Facts.Bias] = 1 },
        Values = [.. scores.Select((s, i) => new EvidenceValue($"{i}", "", new Dictionary<string, double> { [Facts.Score] = s }, i == right, false, false))],
    };
}
