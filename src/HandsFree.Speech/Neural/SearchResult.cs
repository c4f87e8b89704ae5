using HandsFree.Language.Meaning;

namespace HandsFree.Speech.Neural;

/// <summary>What the search found.</summary>
/// <param name="Values">Log probability of each meaning, all its forms and their tokenisations summed, with the likeliest words
/// and how the model writes them.</param>
/// <param name="FreeText">The transcript without the grammar; empty when the model hears no words, cut when nothing inside the grammar
/// was left to compare it with.</param>
/// <param name="FreeLogProbability">Its log probability; of the likeliest text that is not empty.</param>
/// <param name="EmptyLogProbability">Log probability of no words at all.</param>
/// <param name="FreeIsPrefix">The free transcript is the beginning of a sentence of the grammar, and no more.</param>
internal sealed record SearchResult(
    IReadOnlyDictionary<SemanticValue, (double LogProbability, string Words, string Written)> Values,
    string FreeText,
    double FreeLogProbability,
    double EmptyLogProbability,
    bool FreeIsPrefix)
{
    /// <summary>Log probability of the likeliest hypothesis inside the grammar that was dropped unfinished: no value that the search
    /// did not find can lie above it. Minus infinity when nothing was dropped.</summary>
    public double Dropped { get; init; } = double.NegativeInfinity;
}
