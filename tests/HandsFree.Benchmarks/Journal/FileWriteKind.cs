namespace HandsFree.Benchmarks.Journals;

/// <summary>What a traced call did.</summary>
internal enum FileWriteKind
{
    /// <summary>Bytes were written at an offset.</summary>
    Written,

    /// <summary>The file got another length.</summary>
    Cut,

    /// <summary>The file was flushed to the disk.</summary>
    Flushed,

    /// <summary>A number was printed: that event is confirmed.</summary>
    Announced,
}
