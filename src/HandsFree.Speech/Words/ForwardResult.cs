using HandsFree.Language.Meaning;

namespace HandsFree.Speech.Words;

/// <summary>What the forward algorithm found. The probabilities are the network's own, over all sequences of words that there are.</summary>
/// <param name="Values">Probability of each meaning, all its wordings and alignments summed, with its likeliest words.</param>
/// <param name="Unfinished">Probability of a beginning of a sentence that must go on.</param>
/// <param name="MayGoOn">Probability of a whole sentence that may go on.</param>
/// <param name="Empty">Probability of no words at all.</param>
/// <param name="Dropped">What pruning took away, at most: no probability above is too small by more than this.</param>
internal sealed record ForwardResult(
    IReadOnlyDictionary<SemanticValue, (double Probability, string Words)> Values, double Unfinished, double MayGoOn, double Empty, double Dropped);
