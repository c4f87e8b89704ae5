using System.Diagnostics.CodeAnalysis;
using HandsFree.Speech;

namespace HandsFree.App.Hearing;

/// <summary>Which engine hears: a recogniser that is ready, or why none is.</summary>
internal sealed class EngineChoice
{
    private EngineChoice(IRecognizer? recognizer, string line)
    {
        Recognizer = recognizer;
        Line = line;
    }

    /// <summary>The recogniser, to be disposed by whoever asked for it; null where no engine can hear.</summary>
    public IRecognizer? Recognizer { get; }

    /// <summary>One line for the user: which engine hears and why not a better one, or what is wrong and what to do.</summary>
    public string Line { get; }

    public static EngineChoice Of(IRecognizer recognizer, string line) => new(recognizer, line);

    public static EngineChoice None(string line) => new(null, line);

    /// <summary>True with the recogniser, false where there is none; <see cref="Line"/> says which and why in both cases.</summary>
    public bool TryGet([NotNullWhen(true)] out IRecognizer? recognizer)
    {
        recognizer = Recognizer;
        return recognizer is not null;
    }
}
