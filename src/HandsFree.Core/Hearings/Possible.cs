namespace HandsFree.Core.Hearings;

/// <summary>One value that may have been said.</summary>
/// <typeparam name="T">What values are compared by: a reading, a number, a meaning.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="Probability">Posterior probability, 0 to 1. What the values of a hearing lack to 1 is "none of these".</param>
public readonly record struct Possible<T>(T Value, double Probability);
