namespace HandsFree.Speech.Posterior;

/// <summary>One hypothesis of an engine.</summary>
/// <param name="Words">Lower case, parted by single spaces.</param>
/// <param name="LogWeight">Natural logarithm of its weight; only differences count.</param>
internal readonly record struct WeightedWords(string Words, double LogWeight);
