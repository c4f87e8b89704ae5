namespace HandsFree.App.Demo.Script;

/// <summary>Noise under a clip.</summary>
/// <param name="Kind">"pink" or "babble".</param>
/// <param name="SnrDecibels">Level of the speech less that of the noise, dB.</param>
/// <param name="Seed">Chooses the noise.</param>
internal sealed record DemoNoise(string Kind, double SnrDecibels, int Seed);
