using HandsFree.Speech.Words;

namespace HandsFree.Speech.Small;

/// <summary>What network and grammar make of an utterance.</summary>
/// <param name="Found">The probabilities.</param>
/// <param name="FreeText">What the network hears without the grammar.</param>
internal sealed record SmallEvidence(ForwardResult Found, string FreeText);
