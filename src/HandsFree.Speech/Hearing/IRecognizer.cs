using HandsFree.Language.Grammars;

namespace HandsFree.Speech;

/// <summary>The port of the recognisers. One recogniser serves one thread at a time.</summary>
public interface IRecognizer : IDisposable
{
    /// <summary>"words" or "vosk".</summary>
    string Name { get; }

    /// <summary>Makes a grammar ready, so that the first hearing does not pay for it. May be called again at no cost.</summary>
    /// <exception cref="GrammarException">The engine can't listen for this grammar; says which word and what to do.</exception>
    void Prepare(Grammar grammar);

    /// <summary>Hears one piece of speech.</summary>
    /// <param name="samples">16 kHz mono in [-1, 1], with the quiet around it that the endpointer leaves.</param>
    /// <param name="grammar">What can be said now.</param>
    Hearing Hear(ReadOnlySpan<float> samples, Grammar grammar);
}
