using HandsFree.Core.Observations;

namespace HandsFree.Core.Rules.Evaluation;

/// <summary>What must hold beside the threshold; what is null or empty is not asked.</summary>
internal sealed record RuleConditions
{
    /// <summary>Sites of a temperature; null among them stands for a site that was not said.</summary>
    public IReadOnlyList<TemperatureSite?>? Sites { get; init; }

    public bool? RoomAir { get; init; }

    public bool? Machine { get; init; }

    public bool? Uneven { get; init; }

    /// <summary>No earlier pulse outside this set was felt as uneven.</summary>
    public bool UnevenIsNew { get; init; }

    public IReadOnlyList<int>? CountedSeconds { get; init; }

    public bool ArmNotToBeUsed { get; init; }

    /// <summary>At least one of these symptoms was said.</summary>
    public IReadOnlyList<string>? Symptoms { get; init; }

    /// <summary>The resident has at least one of these conditions by the roster.</summary>
    public IReadOnlyList<string>? ResidentHas { get; init; }

    /// <summary>The resident's usual value does not itself lie beyond the threshold; unknown counts as new.</summary>
    public bool NewForResident { get; init; }

    /// <summary>Tests that must all hold.</summary>
    public IReadOnlyList<RuleTest> Also { get; init; } = [];

    /// <summary>Tests of which at least one must hold; none means not asked.</summary>
    public IReadOnlyList<RuleTest> OneOf { get; init; } = [];

    public IEnumerable<RuleTest> Tests => Also.Concat(OneOf);
}
