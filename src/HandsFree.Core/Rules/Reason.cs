namespace HandsFree.Core.Rules;

/// <summary>One rule that spoke in a decision.</summary>
/// <param name="Rule">The rule's id.</param>
/// <param name="Text">What it says, with the threshold and the unit.</param>
/// <param name="Source">Where the rule comes from, with page or section.</param>
/// <param name="Mark">How far that source was checked.</param>
/// <param name="Outcome">What this rule alone would decide.</param>
public sealed record Reason(string Rule, string Text, string Source, RuleMark Mark, Outcome Outcome);
