using HandsFree.Speech.Posterior;
using HandsFree.Speech.Words;

namespace HandsFree.Speech.Small;

/// <summary>From the network's probabilities to a hearing: what is no sentence of the grammar is "none of these".</summary>
internal static class SmallPosterior
{
    /// <summary>Decides what was heard.</summary>
    internal static Hearing Decide(SmallEvidence evidence, SmallParameters parameters)
    {
        ForwardResult found = evidence.Found;
        double inside = found.Values.Values.Sum(v => v.Probability);
        double expected = Math.Exp(parameters.Expectation);
        double total = (expected * inside) + Math.Max(0, 1 - inside);
        Candidate[] candidates = [.. found.Values
            .Select(v => new Candidate(v.Key, v.Value.Words, expected * v.Value.Probability / total))
            .Where(c => c.Probability > 0)
            .OrderByDescending(c => c.Probability)];
        if (Outcomes.OfSentence(candidates, parameters.LeastProbability) is { } sentence)
        {
            return new(sentence, candidates, evidence.FreeText);
        }

        HearingOutcome outcome = found.Empty > 0.5 ? HearingOutcome.Nothing
            : found.Unfinished > 0.5 ? HearingOutcome.Partial
            : HearingOutcome.NoReading;
        return new(outcome, outcome == HearingOutcome.Nothing ? [] : candidates, evidence.FreeText);
    }
}
