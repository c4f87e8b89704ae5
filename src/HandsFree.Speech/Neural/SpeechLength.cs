namespace HandsFree.Speech.Neural;

/// <summary>Whether an answer can be as long as the speech was: a short word can hide in a long sentence, and no score of the model
/// tells (a spelled name became "no").</summary>
internal static class SpeechLength
{
    /// <summary>Quiet that the endpointer leaves around the speech, seconds.</summary>
    private const double Quiet = 0.8;

    /// <summary>The slowest speech that still counts, with a pause: seconds for each syllable, and once.</summary>
    private const double SlowSyllable = 0.45, Once = 0.9;

    /// <summary>Natural log of how much less likely the answer is for each second too long.</summary>
    private const double CostPerSecond = 8;

    /// <summary>What the length of the speech says against an answer: 0, or a negative log probability.</summary>
    /// <param name="words">The answer's words.</param>
    /// <param name="seconds">Length of the audio with the quiet around the speech.</param>
    public static double LogLikelihood(string words, double seconds)
    {
        double longest = Once + (SlowSyllable * Syllables(words));
        return -CostPerSecond * Math.Max(0, seconds - Quiet - longest);
    }

    /// <summary>Groups of vowels, which is near enough.</summary>
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

        return count;
    }
}
