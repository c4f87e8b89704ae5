namespace HandsFree.Core.Dialogue;

/// <summary>Why a value is asked for.</summary>
internal enum WhyAsked
{
    /// <summary>The read-back was refused.</summary>
    Refused,

    /// <summary>The value can't be, or the method can't give it.</summary>
    NotPossible,

    /// <summary>Heard with a small margin, or refused before: the digits one by one.</summary>
    Doubtful,
}
