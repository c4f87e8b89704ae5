namespace HandsFree.App.Demo.Script;

/// <summary>One recording of the demo.</summary>
internal sealed record DemoClip
{
    /// <summary>Its name in the script.</summary>
    public required string Id { get; init; }

    /// <summary>The words that are said in it.</summary>
    public required string Text { get; init; }

    /// <summary>Which synthetic voice says them.</summary>
    public required string Voice { get; init; }

    /// <summary>The file beside the manifest.</summary>
    public required string File { get; init; }

    /// <summary>Where the file comes from: the name of a shared recording; null where the script makes it.</summary>
    public string? Source { get; init; }

    /// <summary>The noise that was mixed in, or null.</summary>
    public DemoNoise? Noise { get; init; }

    /// <summary>SHA-256 of the file, lower-case hexadecimal.</summary>
    public required string Sha256 { get; init; }
}
