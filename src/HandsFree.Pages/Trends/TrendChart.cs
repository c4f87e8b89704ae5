using HandsFree.Core.Quantities;
using HandsFree.Pages.Charts;

namespace HandsFree.Pages.Trends;

/// <summary>The chart of one sign.</summary>
/// <param name="Sign">Which.</param>
/// <param name="Heading">Its name, unit, and the authority of its limits.</param>
/// <param name="Chart">What it shows.</param>
public sealed record TrendChart(VitalSign Sign, string Heading, Chart Chart);
