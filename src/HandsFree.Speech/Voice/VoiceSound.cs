namespace HandsFree.Speech.Voice;

/// <summary>Spoken words as sound.</summary>
/// <param name="Samples">Mono, 16,000 a second, in [-1, 1].</param>
public sealed record VoiceSound(IReadOnlyList<float> Samples)
{
    /// <summary>Samples a second, of every voice.</summary>
    public const int SampleRate = 16_000;

    /// <summary>No sound.</summary>
    public static VoiceSound Silent { get; } = new([]);

    /// <summary>How long it takes to play.</summary>
    public TimeSpan Duration => TimeSpan.FromSeconds((double)Samples.Count / SampleRate);
}
