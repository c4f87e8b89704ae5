namespace HandsFree.Core.Files;

/// <summary>What is wrong with a file of the home or of the program, and where.</summary>
/// <param name="File">The file's name or path.</param>
/// <param name="Line">The line, from 1; 0 where it is the file as a whole.</param>
/// <param name="Reason">What is wrong and what to do.</param>
public sealed record FileError(string File, int Line, string Reason)
{
    /// <summary>As compilers write it: file(line): reason.</summary>
    public override string ToString() => Line > 0 ? $"{File}({Line}): {Reason}" : $"{File}: {Reason}";
}
