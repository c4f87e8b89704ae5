namespace HandsFree.Core.Reports.Sheets;

/// <summary>A report under the headings situation, background, assessment, recommendation (AHRQ, TeamSTEPPS for long-term care, module 2).
/// The first two are made from the record; the other two are the nurse's.</summary>
/// <param name="Report">The report.</param>
/// <param name="Place">"Room 12 bed A", or the resident's id where she is no longer on the roster.</param>
/// <param name="Heading">When a nurse must know, and what it is about.</param>
/// <param name="Situation">The readings with their times, and which limits they passed.</param>
/// <param name="Background">Usual values, limits and whose they are, what was rechecked, oxygen, what was taken with it, rules and sources.</param>
/// <param name="Assessment">Left for the nurse, and said so.</param>
/// <param name="Recommendation">Left for the nurse, and said so; once she acknowledged, what she advised and planned.</param>
/// <param name="Course">What happened to the report, oldest first.</param>
public sealed record ReportSheet(
    Report Report,
    string Place,
    string Heading,
    IReadOnlyList<string> Situation,
    IReadOnlyList<string> Background,
    string Assessment,
    IReadOnlyList<string> Recommendation,
    IReadOnlyList<string> Course);
