namespace HandsFree.Core.Journal;

/// <summary>The second identifier that matched. The name, agreed after looking, is always the first.</summary>
public enum SecondIdentifier
{
    /// <summary>Day and month of birth.</summary>
    BirthDayAndMonth,

    /// <summary>The whole date of birth.</summary>
    BirthDate,

    /// <summary>The number on band or photo.</summary>
    BandNumber,
}
