namespace HandsFree.Core.Journal;

/// <summary>How a record is amended; nothing is overwritten in any of them.</summary>
public enum AmendmentKind
{
    /// <summary>The value should never have been; it counts no more.</summary>
    EnteredInError,

    /// <summary>Another value takes its place.</summary>
    CorrectedValue,

    /// <summary>A value measured earlier is entered now.</summary>
    LateEntry,

    /// <summary>The value belongs to another resident.</summary>
    WrongResident,
}
