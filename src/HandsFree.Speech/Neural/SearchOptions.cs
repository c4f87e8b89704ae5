namespace HandsFree.Speech.Neural;

/// <summary>How wide the search is; all in natural log probability.</summary>
internal sealed record SearchOptions
{
    /// <summary>Most hypotheses inside the grammar.</summary>
    public int Beam { get; init; } = 12;

    /// <summary>A hypothesis this far below the best one inside the grammar is dropped.</summary>
    public double Width { get; init; } = 10;

    /// <summary>A hypothesis this far below the free transcript is dropped: what is no reading dies in a few steps.</summary>
    public double Floor { get; init; } = 14;

    /// <summary>Tokens at most for a second of speech.</summary>
    public double TokensPerSecond { get; init; } = 8;
}
