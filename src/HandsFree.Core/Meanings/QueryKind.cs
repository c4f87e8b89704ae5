namespace HandsFree.Core.Meanings;

/// <summary>Questions that the handover answers.</summary>
public enum QueryKind
{
    /// <summary>"Handover", "shift list".</summary>
    Handover,

    /// <summary>"Who needs a recheck".</summary>
    WhoNeedsARecheck,

    /// <summary>"Open reports".</summary>
    OpenReports,

    /// <summary>"Next".</summary>
    Next,

    /// <summary>"Repeat".</summary>
    Repeat,

    /// <summary>"Previous".</summary>
    Previous,

    /// <summary>"Details".</summary>
    Details,

    /// <summary>"Who was not taken".</summary>
    WhoWasNotTaken,

    /// <summary>"Who refused".</summary>
    WhoRefused,

    /// <summary>"Who has a fever".</summary>
    WhoHasAFever,

    /// <summary>"Last pulse", "temperature of room twelve".</summary>
    LastValue,

    /// <summary>"Who is new", "who changed".</summary>
    WhoIsNewOrChanged,

    /// <summary>"How many are left".</summary>
    HowManyAreLeft,

    /// <summary>"Since when".</summary>
    SinceWhen,

    /// <summary>"Since three", "since the last shift".</summary>
    Since,

    /// <summary>"Told the nurse": no question, but said of the report that was named last.</summary>
    Told,

    /// <summary>"Room twelve", "how is room twelve".</summary>
    Room,

    /// <summary>"Goodbye".</summary>
    Goodbye,
}
