namespace HandsFree.Speech.Sphinx;

/// <summary>One way to understand an utterance.</summary>
/// <param name="Words">Lower case, parted by single spaces.</param>
/// <param name="Score">The decoder's log score, higher is better; its unit is <see cref="SphinxParameters.ScoreScale"/>'s matter.</param>
internal readonly record struct SphinxHypothesis(string Words, int Score);
