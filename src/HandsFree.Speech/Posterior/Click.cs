using HandsFree.Audio.Levels;

namespace HandsFree.Speech.Posterior;

/// <summary>A sound too short for any word. No model tells: under a grammar a click became a number.</summary>
internal static class Click
{
    /// <summary>Of 313 recordings (every third of the shared ones, human and synthetic) the shortest lasts 85 ms by this measure;
    /// clicks and knocks last 10 to 30 ms.</summary>
    private const double ShortestWord = 0.05;

    /// <summary>Whether nothing in the sound lasts as long as a word; so is silence.</summary>
    /// <param name="samples">16 kHz mono with the quiet around the sound.</param>
    public static bool Is(ReadOnlySpan<float> samples) => EffectiveDuration.Seconds(samples) < ShortestWord;
}
