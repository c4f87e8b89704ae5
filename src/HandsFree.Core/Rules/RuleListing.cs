namespace HandsFree.Core.Rules;

/// <summary>One rule as a person may read it in a list.</summary>
/// <param name="Id">The rule's id.</param>
/// <param name="Group">The group that it stands in.</param>
/// <param name="Authority">Entry, method, ordered, home or default.</param>
/// <param name="Text">What it says, without its number.</param>
/// <param name="Threshold">The value, side, number and unit: "pulse above 130 /min".</param>
/// <param name="Conditions">What must hold beside the threshold, in words; empty for none.</param>
/// <param name="Outcome">What the rule decides.</param>
/// <param name="Danger">Whether it makes a danger value.</param>
/// <param name="Recheck">The instruction of the recheck that comes first, or null.</param>
/// <param name="Afterwards">What it decides once the rechecks are used up, where that differs.</param>
/// <param name="Priority">Smaller is named first among equal outcomes.</param>
/// <param name="Source">Author or body, year, title or page.</param>
/// <param name="Mark">How far the source was checked.</param>
/// <param name="InForce">False where it is switched off or replaced by a home limit.</param>
/// <param name="Changed">What the home changed, by whom approved and when; null for nothing.</param>
public sealed record RuleListing(
    string Id,
    string Group,
    RuleAuthority Authority,
    string Text,
    string Threshold,
    string Conditions,
    Outcome Outcome,
    bool Danger,
    string? Recheck,
    Outcome? Afterwards,
    int Priority,
    string Source,
    RuleMark Mark,
    bool InForce,
    string? Changed);
