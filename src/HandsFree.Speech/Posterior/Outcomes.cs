namespace HandsFree.Speech.Posterior;

/// <summary>From probabilities to what was heard. Two questions, one threshold: was it a sentence of the grammar at all (all values together
/// against "none of these"), and which one (the best value alone).</summary>
internal static class Outcomes
{
    /// <summary>Heard, or doubtful; null where it was probably none of these.</summary>
    /// <param name="candidates">Likeliest first.</param>
    /// <param name="least">The least probability that is believed, above 0.</param>
    public static HearingOutcome? OfSentence(IReadOnlyList<Candidate> candidates, double least) =>
        candidates.Count == 0 || candidates.Sum(c => c.Probability) < least ? null
        : candidates[0].Probability >= least ? HearingOutcome.Heard
        : HearingOutcome.Doubtful;
}
