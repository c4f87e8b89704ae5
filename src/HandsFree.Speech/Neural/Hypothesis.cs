namespace HandsFree.Speech.Neural;

/// <summary>One row of the search: tokens so far, inside the grammar or the free transcript, or both at once.</summary>
/// <param name="Row">Its row in the decoder's last step.</param>
/// <param name="LogProbability">Natural log of the probability of its tokens.</param>
/// <param name="Node">Where it is in the grammar; null for a free transcript that has left it.</param>
/// <param name="IsFree">Whether it is the free transcript.</param>
/// <param name="Tokens">The tokens so far.</param>
internal sealed record Hypothesis(int Row, double LogProbability, WrittenNode? Node, bool IsFree, IReadOnlyList<int> Tokens);
