namespace HandsFree.Speech.Posterior;

/// <summary>Whether an answer can be as long as the speech was: a short word can hide in a long sentence, and no score of the model
/// tells (a spelled name became "no").</summary>
internal static class SpeechLength
{
    /// <summary>Quiet that the endpointer leaves around the speech, seconds.</summary>
    private const double Quiet = 0.8;

    /// <summary>The slowest speech that still counts, with a pause: seconds for each syllable, and once.</summary>
    private const double SlowSyllable = 0.45, Once = 0.9;

    /// <summary>Seconds by which the speech is longer than the slowest way to say an answer; 0 where it fits.</summary>
    /// <param name="words">The answer's words.</param>
    /// <param name="seconds">Length of the audio with the quiet around the speech.</param>
    public static double TooLong(string words, double seconds) => Math.Max(0, seconds - Quiet - Once - (SlowSyllable * Syllables(words)));

    /// <summary>Groups of vowels, which is near enough; at least 1.</summary>
    private static int Syllables(string words)
    {
        int count = 0;
        bool inVowel = false;
        foreach (char c in words)
        {
            bool vowel = "aeiouy".Contains(c, StringComparison.Ordinal);
            count += vowel && !inVowel ? 1 : 0;
            inVowel = vowel;
        }

        return Math.Max(1, count);
    }
}
