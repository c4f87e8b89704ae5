namespace HandsFree.Benchmarks.Dictations.Counting;

/// <summary>Something that should not happen, with the whole exchange.</summary>
/// <param name="MissRate">Of the aide.</param>
/// <param name="Visit">Number of the visit.</param>
/// <param name="Kind">"saved although not said", "same text twice", "no end", "not understood by the aide", "typed at the door", "ended early".</param>
/// <param name="What">In words.</param>
/// <param name="Exchange">Line by line.</param>
internal sealed record Finding(double MissRate, int Visit, string Kind, string What, IReadOnlyList<string> Exchange)
{
    /// <summary>A reading, or a refusal, is in the journal that nobody said.</summary>
    public const string Unsaid = "saved although not said";
}
