using HandsFree.Language.Meaning;

namespace HandsFree.Speech;

/// <summary>One value that may have been said.</summary>
/// <param name="Meaning">What it means.</param>
/// <param name="Words">The likeliest words that say it, lower case, spoken form.</param>
/// <param name="Probability">Posterior probability, all its forms summed, over all values and "none of these"; 0 to 1.</param>
public sealed record Candidate(SemanticValue Meaning, string Words, double Probability);
