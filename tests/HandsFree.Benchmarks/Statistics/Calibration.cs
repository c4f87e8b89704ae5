namespace HandsFree.Benchmarks.Statistics;

/// <summary>How far stated probabilities are from what came true.</summary>
internal static class Calibration
{
    /// <summary>Mean squared difference of the probability and what came true, 1 or 0 (Brier 1950, Monthly Weather Review 78, here for one event:
    /// half of his sum over both classes). 0 is best; NaN without predictions.</summary>
    public static double Brier(IReadOnlyCollection<Prediction> predictions) =>
        predictions.Count == 0 ? double.NaN : predictions.Average(p => Math.Pow(p.Probability - (p.Right ? 1 : 0), 2));

    /// <summary>Expected calibration error: over bins of equal width, the differences of mean probability and share of right ones, weighed by the
    /// bins' counts (Naeini, Cooper and Hauskrecht 2015; Guo et al. 2017, equation 3). NaN without predictions.</summary>
    public static double ExpectedError(IReadOnlyCollection<Prediction> predictions, int bins) =>
        predictions.Count == 0 ? double.NaN : Bins(predictions, bins).Sum(b => Math.Abs(b.MeanProbability - b.ShareRight) * b.Count / predictions.Count);

    /// <summary>The reliability table: bins of equal width ((m - 1)/M, m/M], the first with 0 in it; empty ones are left out.</summary>
    public static IReadOnlyList<ReliabilityBin> Bins(IEnumerable<Prediction> predictions, int bins) =>
        [.. predictions
            .GroupBy(p => Math.Clamp((int)Math.Ceiling(p.Probability * bins) - 1, 0, bins - 1))
            .OrderBy(g => g.Key)
            .Select(g => new ReliabilityBin((double)g.Key / bins, (double)(g.Key + 1) / bins, g.Count(), g.Count(p => p.Right), g.Average(p => p.Probability)))];
}
