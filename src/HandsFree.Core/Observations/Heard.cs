namespace HandsFree.Core.Observations;

/// <summary>The first stage: what came in through the microphone or the keys.</summary>
/// <param name="Words">What was understood, as spoken words; what was typed, where typed.</param>
/// <param name="Probability">Probability of the meaning, 0 to 1; 1 where typed.</param>
/// <param name="Margin">Difference of the log posteriors of this meaning and the next (natural logarithm), 0 or more; null
/// where there was no runner-up, and where typed.</param>
/// <param name="RunnerUp">The next meaning in words, or null.</param>
/// <param name="LevelDecibels">Level of the speech in dB full scale, 0 or less; null where typed or unknown.</param>
/// <param name="Typed">By keys, not by voice.</param>
/// <param name="At">When the speech began.</param>
public sealed record Heard(
    string Words, double Probability, double? Margin, string? RunnerUp, double? LevelDecibels, bool Typed, DateTimeOffset At);
