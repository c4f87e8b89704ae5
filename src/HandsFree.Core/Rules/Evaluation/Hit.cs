using HandsFree.Core.Residents;
using HandsFree.Core.Rules.Figures;

namespace HandsFree.Core.Rules.Evaluation;

/// <summary>A rule that spoke.</summary>
internal sealed record Hit(Rule Rule, Outcome Outcome, Recheck? Recheck, string Text, string Source, bool Danger)
{
    /// <summary>The plan in whose place the rule would have reported the value; null where none did.</summary>
    public OrderedLimit? Silenced { get; init; }

    /// <summary>A recheck after an hour or more is an item of the due list, not a second measurement at the bedside.</summary>
    public bool RecheckIsLater => Recheck is { } recheck && recheck.After >= Situation.SameSet;

    public Reason ToReason() => new(Rule.Id, Text, Source, Rule.Mark, Outcome);
}
