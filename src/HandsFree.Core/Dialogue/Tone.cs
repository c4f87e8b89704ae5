namespace HandsFree.Core.Dialogue;

/// <summary>Tones, for where words would be too much or must not be said.</summary>
public enum Tone
{
    /// <summary>A count begins.</summary>
    CountBegins,

    /// <summary>A count ends.</summary>
    CountEnds,
}
