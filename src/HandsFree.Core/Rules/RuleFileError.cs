namespace HandsFree.Core.Rules;

/// <summary>What is wrong with a rule file, and where.</summary>
/// <param name="File">The file's name.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Reason">What is wrong and what to do.</param>
public sealed record RuleFileError(string File, int Line, string Reason)
{
    /// <summary>As compilers write it: file(line): reason.</summary>
    public override string ToString() => $"{File}({Line}): {Reason}";
}
