namespace HandsFree.Benchmarks.Statistics;

/// <summary>A stated probability and what came true.</summary>
/// <param name="Probability">0 to 1.</param>
/// <param name="Right">Whether it came true.</param>
internal readonly record struct Prediction(double Probability, bool Right);
