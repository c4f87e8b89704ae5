using System.Globalization;
using HandsFree.Benchmarks.Statistics;

namespace HandsFree.Benchmarks.Calibrating;

/// <summary>What a calibration gives, on rows that it did not see.</summary>
internal static class CalibrationReport
{
    private const double Sure = 0.95;
    private const int Bins = 10;

    /// <summary>What one wrong hearing costs where one that must be said again costs 1.</summary>
    private const double CostOfWrong = 5;

    private static readonly double[] Thresholds = [0.5, 0.6, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95];

    /// <summary>The threshold of least cost.</summary>
    public static double Choose(IReadOnlyCollection<Judged> rows) => Thresholds.MinBy(t => (CostOfWrong * rows.Count(r => r.Wrong(t))) + rows.Count(r => r.Again(t)));

    /// <summary>The trade-off, and one line for each set under each noise.</summary>
    public static IReadOnlyList<string> Lines(IReadOnlyCollection<Judged> rows, double least) =>
    [
        .. Thresholds.Select(t => string.Create(CultureInfo.InvariantCulture,
            $"heard from {t:0.00}: wrong or let in {rows.Count(r => r.Wrong(t))}, said again {rows.Count(r => r.Again(t))}, of {rows.Count}")),
        .. rows.GroupBy(r => $"{r.Row.Set} {r.Row.State switch { "confirmation" when r.Row.Set.EndsWith("spelled", StringComparison.Ordinal) => "(confirmation) ", _ => "" }}{r.Row.Condition}")
            .OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => Line(g.Key, [.. g], least)),
    ];

    private static string Line(string name, Judged[] rows, double least)
    {
        Prediction[] predictions = [.. rows.Select(r => new Prediction(r.Probability, r.Best is { Right: true }))];
        return string.Create(CultureInfo.InvariantCulture,
            $"{name}: {rows.Count(r => r.Row.IsSentence)} sentences, wrong {rows.Count(r => r.Row.IsSentence && r.Wrong(least))}, said again {rows.Count(r => r.Again(least))}; {rows.Count(r => !r.Row.IsSentence)} that are none, let in {rows.Count(r => !r.Row.IsSentence && r.Wrong(least))}; stray yes {rows.Count(r => r.Wrong(least) && r.Best!.IsYes)}; wrong above {Sure}: {rows.Count(r => r.Wrong(Math.Max(least, Sure)))}; calibration error {Calibration.ExpectedError(predictions, Bins):0.000}, Brier {Calibration.Brier(predictions):0.000}");
    }
}
