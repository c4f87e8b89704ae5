namespace HandsFree.Core.Reports;

/// <summary>How somebody was told.</summary>
public enum ToldHow
{
    /// <summary>Face to face.</summary>
    InPerson,

    /// <summary>By telephone.</summary>
    ByPhone,

    /// <summary>In writing.</summary>
    InWriting,
}
