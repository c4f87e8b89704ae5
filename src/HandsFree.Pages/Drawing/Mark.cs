namespace HandsFree.Pages.Drawing;

/// <summary>A mark: a shape, and always the word beside it.</summary>
public enum Mark
{
    /// <summary>An open report that can't wait: a filled square.</summary>
    ReportNow,

    /// <summary>An open report for this shift: a filled diamond.</summary>
    ReportThisShift,

    /// <summary>A recheck waits: a ring with a dot.</summary>
    Recheck,

    /// <summary>Above a limit: a filled triangle that points up.</summary>
    High,

    /// <summary>Below a limit: a filled triangle that points down.</summary>
    Low,

    /// <summary>Not taken: a square with a cross.</summary>
    NotTaken,

    /// <summary>A value was left open: an empty diamond.</summary>
    LeftOpen,

    /// <summary>Some signs are taken, others not yet: a square, half of it filled.</summary>
    NotComplete,

    /// <summary>Nobody has been there: an empty square.</summary>
    NotVisited,

    /// <summary>She is not in the home: an empty circle.</summary>
    Away,

    /// <summary>A rule speaks of the value, which lies between its limits: an empty triangle.</summary>
    Outside,

    /// <summary>A nurse has it in hand: a tick.</summary>
    Acknowledged,
}
