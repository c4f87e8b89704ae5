using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;
using HandsFree.Language.Sentences;

namespace HandsFree.Speech.Posterior;

/// <summary>From hypotheses in words to probabilities of values: the weights of all sentences that mean one value are added.</summary>
internal static class SentencePosterior
{
    /// <summary>The values, likeliest first, with probabilities that share out <paramref name="mass"/>.</summary>
    /// <param name="hypotheses">In the engine's order; those that are no sentence of the grammar are left out.</param>
    /// <param name="grammar">The grammar in force.</param>
    /// <param name="mass">Probability that it is any of them, 0 to 1; the rest is "none of these".</param>
    internal static IReadOnlyList<Candidate> Share(IReadOnlyList<WeightedWords> hypotheses, Grammar grammar, double mass)
    {
        if (hypotheses.Count == 0)
        {
            return [];
        }

        double highest = hypotheses.Max(h => h.LogWeight);
        var weights = new Dictionary<SemanticValue, (string Words, double Best, double Sum)>();
        foreach (var (words, logWeight) in hypotheses)
        {
            double weight = Math.Exp(logWeight - highest);
            foreach (SemanticValue value in Matcher.Match(grammar, words))
            {
                weights[value] = weights.TryGetValue(value, out var known)
                    ? (weight > known.Best ? words : known.Words, Math.Max(weight, known.Best), known.Sum + weight)
                    : (words, weight, weight);
            }
        }

        double total = weights.Values.Sum(w => w.Sum);
        return [.. weights
            .Select(w => new Candidate(w.Key, w.Value.Words, total > 0 ? mass * w.Value.Sum / total : 0))
            .OrderByDescending(c => c.Probability)];
    }
}
