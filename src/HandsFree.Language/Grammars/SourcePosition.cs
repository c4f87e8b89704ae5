namespace HandsFree.Language.Grammars;

/// <summary>A place in a grammar file.</summary>
/// <param name="File">The file's name.</param>
/// <param name="Line">From 1.</param>
/// <param name="Column">From 1.</param>
public readonly record struct SourcePosition(string File, int Line, int Column)
{
    /// <inheritdoc/>
    public override string ToString() => $"{File}:{Line}:{Column}";
}
