namespace HandsFree.Benchmarks.Dictations.Sound;

/// <summary>Something that is to be heard in the room.</summary>
/// <param name="Voice">Who says it; "cough" for a burst of noise.</param>
/// <param name="Text">The words; for a cough its number.</param>
/// <param name="Variant">Which piece of noise lies under it.</param>
/// <param name="Decibels">Louder than an aide speaks; negative for somebody farther away.</param>
internal sealed record Utterance(string Voice, string Text, int Variant, double Decibels = 0)
{
    /// <summary>The voice of a cough.</summary>
    public const string Cough = "cough";
}
