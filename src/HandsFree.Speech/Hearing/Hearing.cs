namespace HandsFree.Speech;

/// <summary>What an engine heard in one piece of speech under one grammar.</summary>
/// <param name="Outcome">Which of the five.</param>
/// <param name="Candidates">The values, likeliest first; empty unless <see cref="HearingOutcome.Heard"/> or <see cref="HearingOutcome.Doubtful"/>
/// (or kept as evidence of a refused hearing).</param>
/// <param name="Transcript">What the engine would have written without the grammar, for a person to look at; may be empty.</param>
public sealed record Hearing(HearingOutcome Outcome, IReadOnlyList<Candidate> Candidates, string Transcript)
{
    /// <summary>Nothing heard.</summary>
    public static Hearing Nothing { get; } = new(HearingOutcome.Nothing, [], "");

    /// <summary>The likeliest value, or null.</summary>
    public Candidate? Best => Candidates.Count > 0 ? Candidates[0] : null;

    /// <summary>The next one, or null.</summary>
    public Candidate? RunnerUp => Candidates.Count > 1 ? Candidates[1] : null;

    /// <summary>What a value that the search dropped on its way can have as probability at most, 0 to 1; 0 where it dropped none.</summary>
    public double Unfound { get; init; }

    /// <summary>Difference of the log posteriors of the best value and the next (natural logarithm), 0 or more. The next is the runner-up,
    /// or what the search dropped, where that could have been likelier. Infinity without either, 0 without a best.</summary>
    public double Margin => Best is null ? 0 : Math.Max(0, Math.Log(Best.Probability) - Math.Log(Math.Max(RunnerUp?.Probability ?? 0, Unfound)));
}
