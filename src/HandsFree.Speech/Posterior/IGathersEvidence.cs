using HandsFree.Language.Grammars;

namespace HandsFree.Speech.Posterior;

/// <summary>An engine whose evidence can be seen before it decides: for its calibration.</summary>
internal interface IGathersEvidence
{
    /// <summary>What is found; null where nothing was heard.</summary>
    /// <param name="samples">16 kHz mono with the quiet around the speech.</param>
    /// <param name="grammar">The grammar in force.</param>
    Evidence? Evidence(ReadOnlySpan<float> samples, Grammar grammar);
}
