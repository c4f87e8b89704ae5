namespace HandsFree.Speech.Neural;

/// <summary>From the search's scores to probabilities of values, with "none of these" as a competitor.</summary>
internal static class ValuePosterior
{
    /// <summary>How far below the free transcript a true reading may lie before "none of these" is as likely (natural log).</summary>
    private const double Allowance = 7;

    /// <summary>A value below this probability is not heard.</summary>
    private const double LeastProbability = 0.7;

    /// <summary>Decides what was heard.</summary>
    /// <param name="found">The scores.</param>
    /// <param name="seconds">Length of the audio.</param>
    public static Hearing Decide(SearchResult found, double seconds)
    {
        _ = seconds;
        double best = found.Values.Count == 0 ? double.NegativeInfinity : found.Values.Values.Max(v => v.LogProbability);
        double none = found.FreeLogProbability - Allowance;
        double most = Math.Max(best, none);
        double total = Math.Exp(none - most) + found.Values.Values.Sum(v => Math.Exp(v.LogProbability - most));
        Candidate[] candidates = [.. found.Values
            .Select(v => new Candidate(v.Key, v.Value.Words, Math.Exp(v.Value.LogProbability - most) / total))
            .OrderByDescending(c => c.Probability)];
        if (candidates.Length > 0 && candidates[0].Probability >= LeastProbability)
        {
            return new(HearingOutcome.Heard, candidates, found.FreeText);
        }

        return new(found.FreeIsPrefix ? HearingOutcome.Partial : HearingOutcome.NoReading, candidates, found.FreeText);
    }
}
