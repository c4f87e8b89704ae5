using HandsFree.Language.Grammars;
using HandsFree.Speech.Posterior;

namespace HandsFree.Speech.Sphinx;

/// <summary>What the two decoders found in one utterance.</summary>
/// <param name="Words">The best way through the grammar.</param>
/// <param name="List">Ways through the word lattice.</param>
/// <param name="Lead">Lead of the phone loop over the best way, in score for each frame; high for what is no sentence.</param>
internal sealed record SphinxEvidence(string Words, IReadOnlyList<SphinxHypothesis> List, double Lead)
{
    /// <summary>The values of all ways, and what speaks against each and against all of them.</summary>
    /// <param name="grammar">The grammar in force.</param>
    /// <param name="parameters">The measure of the scores.</param>
    /// <param name="seconds">Length of the audio with the quiet around the speech.</param>
    /// <param name="speechToNoise">Speech above noise, dB.</param>
    internal Evidence Of(Grammar grammar, SphinxParameters parameters, double seconds, double speechToNoise) => new(
        [.. SentencePosterior.Share(Weighted(parameters.ScoreScale, parameters.WordCost), grammar, 1)
            .Where(c => c.Probability > 0)
            .Select(c => new FoundValue(c.Meaning, c.Words, new Dictionary<string, double>
            {
                [Facts.Score] = Math.Log(c.Probability),
                [Facts.TooLong] = SpeechLength.TooLong(c.Words, seconds),
            }))],
        new Dictionary<string, double>
        {
            [Facts.Bias] = 1,
            [Facts.Noise] = Facts.NoiseOf(speechToNoise),
            [Facts.Lead] = Lead,
        },
        Words,
        false);

    /// <summary>The best way with weight 1 and the others by how far they fall behind it in the list. The list leaves the cost of
    /// a word out, so it is charged here; what would still come out nearly as good as the best way or better counts half as much,
    /// because the search that found the best way is the exact one.</summary>
    /// <param name="scale">Natural log weight for one unit of score.</param>
    /// <param name="wordCost">Units of score that one word costs.</param>
    internal IReadOnlyList<WeightedWords> Weighted(double scale, double wordCost)
    {
        if (List.Count == 0)
        {
            return [new(Words, 0)];
        }

        double best = List.Where(h => h.Words == Words).Select(h => Charged(h)).DefaultIfEmpty(List.Max(h => Charged(h))).Max();
        return [new(Words, 0), .. List.Where(h => h.Words != Words).Select(h => new WeightedWords(h.Words, Math.Min(-Math.Log(2), scale * (Charged(h) - best))))];

        double Charged(SphinxHypothesis h) => h.Score - (wordCost * (1 + h.Words.Count(c => c == ' ')));
    }
}
