namespace HandsFree.Speech.Sphinx;

/// <summary>What one search made of one utterance.</summary>
/// <param name="Words">The best way through, found by the exact search.</param>
/// <param name="Score">Its log score with the costs of words and ways.</param>
/// <param name="Frames">Decoded frames of 10 ms.</param>
/// <param name="List">Ways through the word lattice, the best one usually among them. Their scores are of sound alone and can't be
/// compared with <paramref name="Score"/>; some are no sentence of the grammar.</param>
internal sealed record SphinxResult(string Words, int Score, int Frames, IReadOnlyList<SphinxHypothesis> List)
{
    /// <summary>The score for each frame.</summary>
    internal double PerFrame => (double)Score / Math.Max(1, Frames);
}
