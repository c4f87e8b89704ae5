using HandsFree.Pages.Drawing;

namespace HandsFree.Pages.Trends;

/// <summary>One reading in the table.</summary>
/// <param name="Value">The number, with its unit where that is not the column's.</param>
/// <param name="Mark">High or low, or null.</param>
/// <param name="Details">How it was taken, recheck, late entry, amendment; one part each.</param>
/// <param name="CountsNoMore">It was amended; it stays on the page, struck out.</param>
public sealed record TrendCell(string Value, Mark? Mark, IReadOnlyList<string> Details, bool CountsNoMore);
