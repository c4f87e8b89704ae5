using HandsFree.Language.Meaning;

namespace HandsFree.Speech.Posterior;

/// <summary>What an engine found in one piece of speech, before anything is decided.</summary>
/// <param name="Values">The values found; each once.</param>
/// <param name="Facts">Numbers of the utterance as a whole, by name: what speaks for "none of these".</param>
/// <param name="Transcript">What was heard without the grammar.</param>
/// <param name="IsPrefix">It is the beginning of a sentence and no more.</param>
internal sealed record Evidence(
    IReadOnlyList<FoundValue> Values, IReadOnlyDictionary<string, double> Facts, string Transcript, bool IsPrefix)
{
    /// <summary>The best that the facts of a value which the search left out can be; null where it left nothing out.</summary>
    public IReadOnlyDictionary<string, double>? Unfound { get; init; }
}

/// <summary>One value that an engine found.</summary>
/// <param name="Meaning">What it means.</param>
/// <param name="Words">The likeliest words that say it.</param>
/// <param name="Facts">Numbers that speak for it or against it, by name.</param>
internal sealed record FoundValue(SemanticValue Meaning, string Words, IReadOnlyDictionary<string, double> Facts);
