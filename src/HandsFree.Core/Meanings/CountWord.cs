namespace HandsFree.Core.Meanings;

/// <summary>Words about counting.</summary>
public enum CountWord
{
    /// <summary>"Count", "start counting".</summary>
    Start,

    /// <summary>"Count the pulse", where breaths would be next. Breaths are never named: the resident must not know.</summary>
    StartPulse,

    /// <summary>"Thirty seconds".</summary>
    ThirtySeconds,

    /// <summary>"Sixty seconds".</summary>
    SixtySeconds,

    /// <summary>"Uneven", "irregular". Nothing is said for the normal case.</summary>
    Uneven,
}
