using HandsFree.Core.Quantities;

namespace HandsFree.Pages.Trends;

/// <summary>What was measured together: readings less than an hour apart.</summary>
/// <param name="When">The time of the first.</param>
/// <param name="By">Who measured.</param>
/// <param name="Cells">All readings of each sign, in the order of time; a sign that was not taken is not there.</param>
public sealed record TrendRow(string When, string By, IReadOnlyDictionary<VitalSign, IReadOnlyList<TrendCell>> Cells);
