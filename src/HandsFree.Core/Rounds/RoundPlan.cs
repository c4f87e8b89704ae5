using HandsFree.Core.Quantities;

namespace HandsFree.Core.Rounds;

/// <summary>What the home's round takes from everyone.</summary>
/// <param name="Signs">The vital signs, in the order in which the program asks.</param>
public sealed record RoundPlan(IReadOnlyList<VitalSign> Signs);
