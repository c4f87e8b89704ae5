using HandsFree.Speech;

namespace HandsFree.App.Hear;

/// <summary>What was heard in one recording.</summary>
/// <param name="File">The file as it was named.</param>
/// <param name="Engine">The engine that heard.</param>
/// <param name="Hearing">What it heard.</param>
/// <param name="Audio">How long the recording is.</param>
/// <param name="Decoding">How long the engine took.</param>
internal sealed record HeardFile(string File, string Engine, Speech.Hearing Hearing, TimeSpan Audio, TimeSpan Decoding)
{
    /// <summary>The outcome's word on the command line.</summary>
    public string Outcome => Hearing.Outcome switch
    {
        HearingOutcome.Heard => "heard",
        HearingOutcome.Nothing => "nothing",
        HearingOutcome.NoReading => "no reading",
        HearingOutcome.Partial => "partial",
        HearingOutcome.Doubtful => "doubtful",
        _ => throw new InvalidOperationException($"no such outcome: {Hearing.Outcome}"),
    };

    /// <summary>What was understood; null unless a sentence of the grammar was heard, whatever evidence is kept of a refused one.</summary>
    public Candidate? Understood => Hearing.Outcome == HearingOutcome.Heard ? Hearing.Best : null;

    /// <summary>The next likely meaning, or null.</summary>
    public Candidate? RunnerUp => Understood is null ? null : Hearing.RunnerUp;

    /// <summary>Difference of the log posteriors of the two; null without both.</summary>
    public double? Margin => RunnerUp is null || !double.IsFinite(Hearing.Margin) ? null : Hearing.Margin;
}
