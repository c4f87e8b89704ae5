using HandsFree.Language.Meaning;
using HandsFree.Speech;
using HandsFree.Speech.Posterior;

namespace HandsFree.Benchmarks.Calibrating;

/// <summary>A row decided with parameters.</summary>
/// <param name="Row">The row.</param>
/// <param name="Best">Its likeliest value, or null.</param>
/// <param name="Probability">Of that value; 0 without one.</param>
internal sealed record Judged(EvidenceRow Row, EvidenceValue? Best, double Probability)
{
    /// <summary>Decides as the product does.</summary>
    public static Judged Of(EvidenceRow row, PosteriorParameters parameters)
    {
        FoundValue[] values = [.. row.Values.Select((v, i) => new FoundValue(new SemanticNumber(i), v.Words, v.Facts))];
        if (values.Length == 0)
        {
            return new(row, null, 0);
        }

        Candidate best = CalibratedPosterior.Decide(new(values, row.Facts, "", false), parameters).Best!;
        return new(row, row.Values[Array.FindIndex(values, v => v.Meaning.Equals(best.Meaning))], best.Probability);
    }

    /// <summary>Whether it is heard as something else, or let in. A guess that is heard in speech without a reading does no harm.</summary>
    public bool Wrong(double least) => Best is { Right: false } && Probability >= least && (Row.IsSentence || !Best.IsGuess);

    /// <summary>A sentence that must be said again.</summary>
    public bool Again(double least) => Row.IsSentence && Probability < least;
}
