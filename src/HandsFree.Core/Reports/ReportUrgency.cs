namespace HandsFree.Core.Reports;

/// <summary>When a nurse is to be told.</summary>
public enum ReportUrgency
{
    /// <summary>Before the shift ends.</summary>
    ThisShift,

    /// <summary>Before the aide leaves the resident.</summary>
    Now,
}
