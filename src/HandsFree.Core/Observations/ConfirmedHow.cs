namespace HandsFree.Core.Observations;

/// <summary>How a reading was confirmed. Silence and time are not among the ways.</summary>
public enum ConfirmedHow
{
    /// <summary>By an explicit yes after the read-back.</summary>
    Yes,

    /// <summary>By saying the value again after the read-back.</summary>
    SaidAgain,

    /// <summary>Corrected in one breath, read back again, then an explicit yes.</summary>
    CorrectedThenYes,
}
