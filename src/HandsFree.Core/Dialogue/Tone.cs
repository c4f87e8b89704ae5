namespace HandsFree.Core.Dialogue;

/// <summary>Tones, for where words would be too much or must not be said.</summary>
public enum Tone
{
    /// <summary>A count begins.</summary>
    CountBegins,

    /// <summary>A count ends.</summary>
    CountEnds,

    /// <summary>It is saved, and there is nothing to say about it.</summary>
    Saved,

    /// <summary>The resident is identified: readings can begin.</summary>
    Ready,

    /// <summary>It could not be saved; words follow.</summary>
    NotSaved,
}
