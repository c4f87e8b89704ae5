namespace HandsFree.Benchmarks.Dictations.Sound;

/// <summary>The noise of a room.</summary>
/// <param name="Kind">"pink" or "babble".</param>
/// <param name="SnrDecibels">An aide's speech above it, dB.</param>
internal sealed record RoomNoise(string Kind, double SnrDecibels);
