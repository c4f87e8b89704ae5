namespace HandsFree.Core.Rules.Limits;

/// <summary>The line beyond which a nurse is told of a single value.</summary>
/// <param name="Number">In the unit of the limited value.</param>
/// <param name="IsBeyond">Whether the number itself lies beyond.</param>
/// <param name="Outcome">What follows beyond it.</param>
/// <param name="Authority">An order, the home, or the program's default.</param>
/// <param name="Rule">The rule's id.</param>
/// <param name="OrderedBy">Who ordered it; null for what is no order.</param>
public sealed record ReportLimit(decimal Number, bool IsBeyond, Outcome Outcome, RuleAuthority Authority, string Rule, string? OrderedBy);
