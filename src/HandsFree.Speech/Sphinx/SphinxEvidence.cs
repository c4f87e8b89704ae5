using HandsFree.Speech.Posterior;

namespace HandsFree.Speech.Sphinx;

/// <summary>What the two decoders found in one utterance.</summary>
/// <param name="Hypotheses">Ways through the grammar, best first.</param>
/// <param name="Lead">Lead of the phone loop over the best of them, in score for each frame; high for what is no sentence.</param>
internal sealed record SphinxEvidence(IReadOnlyList<SphinxHypothesis> Hypotheses, double Lead)
{
    /// <summary>The hypotheses with their scores as log weights.</summary>
    internal WeightedWords[] Weighted(double scale) => [.. Hypotheses.Select(h => new WeightedWords(h.Words, h.Score * scale))];
}
