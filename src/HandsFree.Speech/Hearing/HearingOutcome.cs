namespace HandsFree.Speech;

/// <summary>The outcomes that are kept apart; each has its own words in the dialogue.</summary>
public enum HearingOutcome
{
    /// <summary>No speech.</summary>
    Nothing,

    /// <summary>Speech that is no sentence of the grammar in force.</summary>
    NoReading,

    /// <summary>The beginning of a sentence of the grammar.</summary>
    Partial,

    /// <summary>A sentence of the grammar.</summary>
    Heard,

    /// <summary>A sentence of the grammar, but which one is not sure: two or more are likely.</summary>
    Doubtful,
}
