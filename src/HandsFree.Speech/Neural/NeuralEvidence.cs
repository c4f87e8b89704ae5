using HandsFree.Speech.Posterior;

namespace HandsFree.Speech.Neural;

/// <summary>From the search's scores to the evidence that <see cref="CalibratedPosterior"/> weighs.</summary>
internal static class NeuralEvidence
{
    private const double LeastEmpty = -8, LeastLeftOut = -12;

    /// <summary>The scores against the free transcript, with what is known of the sound.</summary>
    /// <param name="found">The scores.</param>
    /// <param name="seconds">Length of the audio with the quiet around the speech.</param>
    /// <param name="speechToNoise">Speech above noise, dB.</param>
    public static Evidence Of(SearchResult found, double seconds, double speechToNoise)
    {
        double leftOut = found.Dropped - found.FreeLogProbability;
        return new(
            [.. found.Values.Select(v => new FoundValue(v.Key, v.Value.Words, new Dictionary<string, double>
            {
                [Facts.Score] = v.Value.LogProbability - found.FreeLogProbability,
                [Facts.TooLong] = SpeechLength.TooLong(v.Value.Words, seconds),
                [Facts.Short] = 1.0 / SpeechLength.Syllables(v.Value.Words),
                [Facts.Unlike] = TextDistance.Of(v.Value.Written, found.FreeText),
            }))],
            new Dictionary<string, double>
            {
                [Facts.Bias] = 1,
                [Facts.Noise] = Facts.NoiseOf(speechToNoise),
                [Facts.Free] = found.FreeLogProbability,
                [Facts.Empty] = Math.Max(LeastEmpty, found.EmptyLogProbability),
                [Facts.LeftOut] = Math.Max(LeastLeftOut, leftOut),
            },
            found.FreeText,
            found.FreeIsPrefix)
        {
            Unfound = leftOut,
        };
    }
}
