namespace HandsFree.Core.Meanings;

/// <summary>A number as it was said, before it is a quantity.</summary>
/// <param name="First">The number, or the upper one of a pair.</param>
/// <param name="Second">The lower one of a pair; null for a single number.</param>
public sealed record SpokenNumber(decimal First, decimal? Second = null);
