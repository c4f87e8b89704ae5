namespace HandsFree.Core.Reports;

/// <summary>How far a report has come.</summary>
public enum ReportState
{
    /// <summary>Nobody was told.</summary>
    Open,

    /// <summary>A nurse was told; she has not acknowledged it.</summary>
    Told,

    /// <summary>A nurse knows of it and has it in hand.</summary>
    Acknowledged,

    /// <summary>Nothing more is to be done.</summary>
    Closed,
}
