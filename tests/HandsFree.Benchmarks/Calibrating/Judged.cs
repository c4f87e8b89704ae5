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

    /// <summary>Whether it is heard as something else, or let in. A guess does no harm: the dialogue never takes one.</summary>
    public bool Wrong(double least) => Best is { Right: false, IsGuess: false } && Probability >= least;

    /// <summary>A sentence that is heard as a guess that it is not: it must be said again.</summary>
    public bool Guess(double least) => Row.IsSentence && Best is { Right: false, IsGuess: true } && Probability >= least;

    /// <summary>A sentence that must be said again.</summary>
    public bool Again(double least) => Row.IsSentence && (Probability < least || Guess(least));
}
