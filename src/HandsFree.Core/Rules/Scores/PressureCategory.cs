namespace HandsFree.Core.Rules.Scores;

/// <summary>Blood pressure categories of ACC/AHA 2017, table 6, for the average of at least two readings on two occasions: a word
/// for a list, no rule of this program stands on it.</summary>
public enum PressureCategory
{
    /// <summary>Below 120 and below 80 mm[Hg].</summary>
    Normal,

    /// <summary>120 to 129 and below 80.</summary>
    Elevated,

    /// <summary>130 to 139 or 80 to 89.</summary>
    Stage1,

    /// <summary>140 or more, or 90 or more.</summary>
    Stage2,

    /// <summary>Above 180 and/or above 120 (strict).</summary>
    Crisis,
}
