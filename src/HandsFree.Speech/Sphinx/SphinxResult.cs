namespace HandsFree.Speech.Sphinx;

/// <summary>What one search made of one utterance.</summary>
/// <param name="Hypotheses">Best first; empty when the search found no way through.</param>
/// <param name="Frames">Decoded frames of 10 ms.</param>
internal sealed record SphinxResult(IReadOnlyList<SphinxHypothesis> Hypotheses, int Frames)
{
    internal static SphinxResult Nothing { get; } = new([], 0);

    /// <summary>The best score for each frame.</summary>
    internal double PerFrame => (double)Hypotheses[0].Score / Math.Max(1, Frames);
}
