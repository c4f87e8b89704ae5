namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>What a prompt asks the aide for, as she understands its words.</summary>
internal enum Wants
{
    /// <summary>Nothing that she has to answer.</summary>
    Nothing,

    /// <summary>Room and bed.</summary>
    Place,

    /// <summary>Whether the name is the right one.</summary>
    Name,

    /// <summary>The birthday.</summary>
    Birthday,

    /// <summary>Whether a read-back is right.</summary>
    Confirmation,

    /// <summary>A read-back, and the number again.</summary>
    SayingAgain,

    /// <summary>The digits of the number.</summary>
    Digits,

    /// <summary>The number of a named sign.</summary>
    Value,

    /// <summary>The whole reading again.</summary>
    WholeReading,

    /// <summary>What was counted.</summary>
    Count,

    /// <summary>To count from the tone on.</summary>
    Counting,

    /// <summary>Whether "not taken" is right.</summary>
    NotTaken,

    /// <summary>Whether it was measured just now.</summary>
    JustNow,

    /// <summary>Whether there is a symptom.</summary>
    Symptom,

    /// <summary>A question that should not have come up: no.</summary>
    Unwanted,

    /// <summary>Whether to try to save again.</summary>
    TryAgain,

    /// <summary>To go on after a pause that nobody asked for.</summary>
    Continue,

    /// <summary>What can be said: the question before it stands.</summary>
    Options,
}
