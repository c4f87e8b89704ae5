namespace HandsFree.Speech.Words;

/// <summary>What network and grammar make of an utterance.</summary>
/// <param name="Found">The probabilities.</param>
/// <param name="FreeText">What the network hears without the grammar.</param>
internal sealed record WordsEvidence(ForwardResult Found, string FreeText);
