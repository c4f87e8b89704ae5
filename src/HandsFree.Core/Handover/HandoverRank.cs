namespace HandsFree.Core.Handover;

/// <summary>The exceptions first: the order of the handover.</summary>
public enum HandoverRank
{
    /// <summary>An open report that can't wait.</summary>
    ReportNow,

    /// <summary>An open report for this shift.</summary>
    ReportThisShift,

    /// <summary>A recheck was asked for and not done.</summary>
    RecheckWaiting,

    /// <summary>A nurse acknowledged a report since the list began, or her plan stands.</summary>
    Acknowledged,

    /// <summary>Something was not taken, with a reason.</summary>
    NotTaken,

    /// <summary>A value was left open.</summary>
    LeftOpen,

    /// <summary>Some signs are taken, others are still due.</summary>
    Begun,

    /// <summary>Nobody has been there.</summary>
    NothingYet,

    /// <summary>All that is due is taken, and in order.</summary>
    InOrder,
}
