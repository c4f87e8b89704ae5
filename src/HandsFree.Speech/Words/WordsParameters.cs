namespace HandsFree.Speech.Words;

/// <summary>What was chosen on recordings of speakers that the training never heard (benchmark "words-calibration"); see DEVELOPERS.md.</summary>
/// <param name="Temperature">The network's logits are divided by it.</param>
/// <param name="Expectation">Natural logarithm of how much likelier a sentence of the grammar in force is than the network believes, which
/// knows no grammar.</param>
/// <param name="LeastProbability">A value below it is not heard.</param>
/// <param name="Beam">Ways that fall further behind the likeliest are dropped (natural logarithm).</param>
/// <param name="MostWays">The likeliest so many go on from one row to the next.</param>
/// <param name="SilenceDecibels">Sound whose loudest tenth of a second lies below it is nothing; decibels below full scale.</param>
internal sealed record WordsParameters(double Temperature, double Expectation, double LeastProbability, double Beam, int MostWays, double SilenceDecibels)
{
    internal static WordsParameters Measured { get; } = new(1, 5, 0.85, 12, 400, -60);
}
