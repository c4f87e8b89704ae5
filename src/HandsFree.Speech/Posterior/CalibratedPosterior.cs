namespace HandsFree.Speech.Posterior;

/// <summary>From an engine's evidence to probabilities of values, with "none of these" as a competitor: a multinomial logistic model.
/// The log weight of a value, and of "none of these", is the sum of its facts times their weights; the probabilities are the weights
/// over their sum. With a weight of 1 for the score it would be the engine's own opinion; calibrated, it is less sure of itself
/// (temperature scaling) and listens to the length, the noise, and what was heard freely.</summary>
internal static class CalibratedPosterior
{
    /// <summary>Decides what was heard.</summary>
    public static Hearing Decide(Evidence found, PosteriorParameters parameters)
    {
        double[] logs = [.. found.Values.Select(v => LogWeight(v.Facts, parameters.Value)), LogWeight(found.Facts, parameters.None)];
        double most = logs.Max();
        double total = logs.Sum(log => Math.Exp(log - most));
        Candidate[] candidates = [.. found.Values
            .Select((v, i) => new Candidate(v.Meaning, v.Words, Math.Exp(logs[i] - most) / total))
            .OrderByDescending(c => c.Probability)];
        HearingOutcome outcome = Outcomes.OfSentence(candidates, parameters.LeastProbability)
            ?? (found.IsPrefix ? HearingOutcome.Partial : HearingOutcome.NoReading);
        double unfound = found.Unfound is null ? 0 : Math.Exp(LogWeight(found.Unfound, parameters.Value) - most) / total;
        return new(outcome, candidates, found.Transcript) { Unfound = Math.Min(1, unfound) };
    }

    private static double LogWeight(IReadOnlyDictionary<string, double> facts, IReadOnlyDictionary<string, double> weights) =>
        weights.Sum(w => w.Value * (facts.TryGetValue(w.Key, out double fact) ? fact
            : throw new InvalidOperationException($"the parameters weigh \"{w.Key}\", which this engine does not measure")));
}
