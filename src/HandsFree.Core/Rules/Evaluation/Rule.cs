using HandsFree.Core.Quantities;

namespace HandsFree.Core.Rules.Evaluation;

/// <summary>One rule as it stands in a rule file.</summary>
internal sealed record Rule
{
    public required string Id { get; init; }

    public required string Text { get; init; }

    public required string Group { get; init; }

    public required RuleAuthority Authority { get; init; }

    public required RuleTest Test { get; init; }

    public required RuleConditions When { get; init; }

    public required Outcome Action { get; init; }

    /// <summary>What the rule decides once its rechecks are used up; null for the same.</summary>
    public Outcome? Afterwards { get; init; }

    public RuleRecheck? Recheck { get; init; }

    /// <summary>A danger value: "use the call light now".</summary>
    public bool Danger { get; init; }

    /// <summary>The rule looks at a set and is asked whenever one of its signs is read.</summary>
    public bool Set { get; init; }

    /// <summary>Asked only while a nurse's plan stands for its value and side, and then whatever the plan says: no plan reaches past it.</summary>
    public bool BeyondPlans { get; init; }

    /// <summary>A home limit of the same kind does not take its place.</summary>
    public bool StaysBesideHomeLimits { get; init; }

    public required int Priority { get; init; }

    public required string Source { get; init; }

    public required RuleMark Mark { get; init; }

    public bool Off { get; init; }

    /// <summary>What the home changed, with who approved it and when.</summary>
    public string? Changed { get; init; }

    /// <summary>A home can't change or switch it off.</summary>
    public bool Fixed { get; init; }

    /// <summary>A limit of the home or of the program, which an order for that side of that value replaces. A rule that asks for a
    /// symptom is none: no order on a number was made for the symptom.</summary>
    public bool YieldsToOrders => Authority is RuleAuthority.Home or RuleAuthority.Default && When.Symptoms is null;

    /// <summary>Whether the rule is asked for a reading of that sign.</summary>
    public bool Concerns(VitalSign sign) =>
        Test.Of.Signs.Count == 0 || Test.Of.Signs.Contains(sign) || (Set && When.Tests.Any(t => t.Of.Signs.Contains(sign)));
}
