namespace HandsFree.App.Checks;

/// <summary>How one check of the self-test ended.</summary>
internal enum CheckState
{
    /// <summary>As it should be.</summary>
    Ok,

    /// <summary>The program works without it, less well.</summary>
    Warning,

    /// <summary>The program can't do its job.</summary>
    Failed,
}
