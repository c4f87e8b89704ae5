namespace HandsFree.Core.Reports;

/// <summary>Who is told of a report.</summary>
public enum Told
{
    /// <summary>The nurse: what the aide owes.</summary>
    Nurse,

    /// <summary>The prescriber (42 CFR 483.10(g)(14)(i): consult the physician on a significant change).</summary>
    Prescriber,

    /// <summary>Family or representative (42 CFR 483.10(g)(14)(i): notify the representative).</summary>
    Family,
}
