namespace HandsFree.Speech.Neural;

/// <summary>From the search's scores to probabilities of values, with "none of these" as a competitor.</summary>
internal static class ValuePosterior
{
    /// <summary>How far below the free transcript a true reading may lie before "none of these" is as likely (natural log).</summary>
    private const double Allowance = 5.5;

    /// <summary>A value below this probability is not heard.</summary>
    private const double LeastProbability = 0.7;

    /// <summary>Decides what was heard.</summary>
    /// <param name="found">The scores.</param>
    /// <param name="seconds">Length of the audio.</param>
    public static Hearing Decide(SearchResult found, double seconds)
    {
        var scores = found.Values.ToDictionary(v => v.Key, v => v.Value.LogProbability + SpeechLength.LogLikelihood(v.Value.Words, seconds));
        double none = found.FreeLogProbability - Allowance;
        double most = scores.Values.Append(none).Max();
        double total = Math.Exp(none - most) + scores.Values.Sum(score => Math.Exp(score - most));
        Candidate[] candidates = [.. scores
            .Select(s => new Candidate(s.Key, found.Values[s.Key].Words, Math.Exp(s.Value - most) / total))
            .OrderByDescending(c => c.Probability)];
        if (candidates.Length > 0 && candidates[0].Probability >= LeastProbability)
        {
            return new(HearingOutcome.Heard, candidates, found.FreeText);
        }

        return new(found.FreeIsPrefix ? HearingOutcome.Partial : HearingOutcome.NoReading, candidates, found.FreeText);
    }
}
