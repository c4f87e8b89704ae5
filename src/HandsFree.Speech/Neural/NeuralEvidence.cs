using HandsFree.Speech.Posterior;

namespace HandsFree.Speech.Neural;

/// <summary>From the search's scores to the evidence that <see cref="CalibratedPosterior"/> weighs.</summary>
internal static class NeuralEvidence
{
    private const double LeastLeftOut = -12;

    /// <summary>The scores against the free transcript, with what is known of the sound.</summary>
    /// <param name="found">The scores.</param>
    /// <param name="seconds">Length of the audio with the quiet around the speech.</param>
    /// <param name="speechToNoise">Speech above noise, dB.</param>
    public static Evidence Of(SearchResult found, double seconds, double speechToNoise)
    {
        double noise = Facts.NoiseOf(speechToNoise);
        double leftOut = Math.Max(LeastLeftOut, found.Dropped - found.FreeLogProbability);
        return new(
            [.. found.Values.Select(v => new FoundValue(v.Key, v.Value.Words, Value(
                v.Value.LogProbability - found.FreeLogProbability,
                noise,
                SpeechLength.TooLong(v.Value.Words, seconds),
                TextDistance.Of(v.Value.Written, found.FreeText))))],
            new Dictionary<string, double> { [Facts.Bias] = 1, [Facts.Noise] = noise, [Facts.LeftOut] = leftOut },
            found.FreeText,
            found.FreeIsPrefix)
        {
            Unfound = double.IsNegativeInfinity(found.Dropped) ? null : Value(leftOut, noise, 0, 0),
        };
    }

    private static Dictionary<string, double> Value(double score, double noise, double tooLong, double unlike) => new()
    {
        [Facts.Score] = score,
        [Facts.ScoreInNoise] = score * noise,
        [Facts.TooLong] = tooLong,
        [Facts.Unlike] = unlike,
    };
}
