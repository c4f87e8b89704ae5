using HandsFree.Language.Meaning;
using HandsFree.Speech;
using HandsFree.Speech.Sphinx;

namespace HandsFree.Benchmarks.Sphinx;

/// <summary>One recording, what its words mean in the grammar that it was heard with, and what the decoders found.</summary>
/// <param name="Clip">The recording.</param>
/// <param name="Truth">Null when its words are no sentence of the grammar.</param>
/// <param name="Evidence">Null when nothing was heard.</param>
/// <param name="Shares">The values found and how they share the probability, best first.</param>
internal sealed record Trial(TrialClip Clip, SemanticValue? Truth, SphinxEvidence? Evidence, IReadOnlyList<Candidate> Shares)
{
    /// <summary>Found as what it means, whatever the threshold.</summary>
    internal bool IsRight => Truth is not null && Shares.Count > 0 && Shares[0].Meaning.Equals(Truth);

    /// <summary>Whether a threshold accepts it.</summary>
    internal bool Heard(double threshold) => Shares.Count > 0 && Evidence!.Lead <= threshold;

    /// <summary>Accepted as something that it does not mean. A guess may be heard in what is no sentence: it is refused anyway.</summary>
    internal bool Wrong(double threshold) => Truth is not null && Heard(threshold) && !IsRight;

    /// <summary>No sentence, and accepted as one that is not refused later.</summary>
    internal bool LetIn(double threshold) =>
        Truth is null && Heard(threshold) && !(Shares[0].Meaning is SemanticRecord record && record["hedge"] is not null);

    /// <summary>A sentence that has to be said again.</summary>
    internal bool None(double threshold) => Truth is not null && !Heard(threshold);
}
