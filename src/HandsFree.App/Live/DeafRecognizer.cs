using HandsFree.Language.Grammars;
using HandsFree.Speech;

namespace HandsFree.App.Live;

/// <summary>No engine: for a round by keys alone, which needs none.</summary>
internal sealed class DeafRecognizer : IRecognizer
{
    /// <inheritdoc/>
    public string Name => "none";

    /// <inheritdoc/>
    public void Prepare(Grammar grammar)
    {
        // Hears nothing.
    }

    /// <inheritdoc/>
    public Speech.Hearing Hear(ReadOnlySpan<float> samples, Grammar grammar) => Speech.Hearing.Nothing;

    /// <inheritdoc/>
    public void Dispose()
    {
        // Holds nothing.
    }
}
