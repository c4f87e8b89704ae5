namespace HandsFree.Benchmarks.Statistics;

/// <summary>Predictions of about the same probability.</summary>
/// <param name="Low">Probabilities above this (the first bin: from this).</param>
/// <param name="High">Up to this.</param>
/// <param name="Count">How many.</param>
/// <param name="Right">How many came true.</param>
/// <param name="MeanProbability">Mean of what was stated.</param>
internal sealed record ReliabilityBin(double Low, double High, int Count, int Right, double MeanProbability)
{
    /// <summary>Share that came true.</summary>
    public double ShareRight => (double)Right / Count;
}
