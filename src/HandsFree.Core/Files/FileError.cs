namespace HandsFree.Core.Files;

/// <summary>What is wrong with a file of the home or of the program, and where.</summary>
/// <param name="File">The file's name or path.</param>
/// <param name="Line">The line, from 1; 0 where it is the file as a whole.</param>
/// <param name="Reason">What is wrong and what to do.</param>
public sealed record FileError(string File, int Line, string Reason)
{
    /// <summary>The column of a table, from 1; 0 where it is the line as a whole.</summary>
    public int Column { get; init; }

    /// <summary>As compilers write it: file(line): reason, or file(line,column): reason.</summary>
    public override string ToString() => (Line, Column) switch
    {
        (0, _) => $"{File}: {Reason}",
        (_, 0) => $"{File}({Line}): {Reason}",
        _ => $"{File}({Line},{Column}): {Reason}",
    };
}
