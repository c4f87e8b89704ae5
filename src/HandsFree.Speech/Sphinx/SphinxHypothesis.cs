namespace HandsFree.Speech.Sphinx;

/// <summary>One way through the word lattice of an utterance.</summary>
/// <param name="Words">Lower case, parted by single spaces.</param>
/// <param name="Score">Log score of the sound, higher is better; its unit is <see cref="SphinxParameters.ScoreScale"/>'s matter.</param>
internal readonly record struct SphinxHypothesis(string Words, int Score);
