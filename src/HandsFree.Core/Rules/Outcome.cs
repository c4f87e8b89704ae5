namespace HandsFree.Core.Rules;

/// <summary>What a decision says; in order of weight, the worst wins.</summary>
public enum Outcome
{
    /// <summary>The value is kept and nothing follows.</summary>
    Accept,

    /// <summary>A nurse is told this shift.</summary>
    ReportThisShift,

    /// <summary>A nurse is told before the aide leaves the resident.</summary>
    ReportNow,

    /// <summary>The value can't be, or the method can't give it: it is said again and nothing is kept.</summary>
    AskAgain,
}
