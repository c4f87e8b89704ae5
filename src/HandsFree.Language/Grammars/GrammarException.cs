namespace HandsFree.Language.Grammars;

/// <summary>A grammar is broken, or an engine can't listen for it. The message names the place and what was expected.</summary>
public sealed class GrammarException : Exception
{
    /// <summary>A broken grammar.</summary>
    public GrammarException(SourcePosition at, string message)
        : base($"{at}: {message}") => At = at;

    /// <summary>A grammar that is well formed but can't be used.</summary>
    public GrammarException(string message)
        : base(message)
    {
    }

    /// <summary>Where, if it is a place in a file.</summary>
    public SourcePosition? At { get; }
}
