using HandsFree.Core.Quantities;
using HandsFree.Pages.Charts;
using HandsFree.Pages.Drawing;

namespace HandsFree.Pages.Handovers;

/// <summary>One vital sign of one resident: the last reading, what is usual, two weeks.</summary>
/// <param name="Sign">Which.</param>
/// <param name="Value">The number, with its unit where that is not the column's; null where there is no reading.</param>
/// <param name="When">When it was measured: the time, on another day the day; with "~" for a late entry.</param>
/// <param name="How">How it was taken, in short; empty for nothing said.</param>
/// <param name="Usual">What is usual, or null where it is not known.</param>
/// <param name="Mark">High or low, or null.</param>
/// <param name="IsOld">It was measured before this shift.</param>
/// <param name="Trend">Two weeks.</param>
public sealed record SignCell(VitalSign Sign, string? Value, string When, string How, string? Usual, Mark? Mark, bool IsOld, Chart Trend);
