namespace HandsFree.Benchmarks.Live;

/// <summary>How long an answer took.</summary>
/// <param name="Words">What was said.</param>
/// <param name="Whole">From the end of speech to the first sound.</param>
/// <param name="Quiet">The endpointer's quiet that is in it.</param>
internal sealed record AnswerTime(string Words, TimeSpan Whole, TimeSpan Quiet)
{
    /// <summary>What is measured against the aim.</summary>
    public TimeSpan Beyond => Whole - Quiet;
}
