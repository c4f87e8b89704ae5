using HandsFree.Core.Observations;

namespace HandsFree.Core.Rules;

/// <summary>Decides readings that were taken together: each is looked at with all the others of its set.</summary>
public static class SetDecisions
{
    /// <summary>The decision on each reading, in their order. Of two readings of one vital sign the second knows the first (lying, then
    /// standing), and not the other way. A value that is asked again is no reading for the others.</summary>
    /// <param name="rules">The rules.</param>
    /// <param name="set">The readings, in the order in which they were taken.</param>
    /// <param name="context">Resident, earlier readings (those of the set not among them), symptoms.</param>
    public static IReadOnlyList<Decision> Decide(this IRulebook rules, IReadOnlyList<Reading> set, DecisionContext context)
    {
        bool[] kept = [.. set.Select(reading => rules.Decide(reading, context).Outcome != Outcome.AskAgain)];
        return
        [
            .. set.Select((reading, i) => rules.Decide(reading, context with
            {
                Earlier =
                [
                    .. context.Earlier,
                    .. set.Where((other, j) => kept[j] && j != i && (j < i || other.Value.Sign != reading.Value.Sign))
                        .Select(other => new PastReading(other, context.At)),
                ],
            })),
        ];
    }
}
