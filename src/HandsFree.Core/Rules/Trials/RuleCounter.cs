namespace HandsFree.Core.Rules.Trials;

/// <summary>Counts what rules ask for, all together and each.</summary>
internal sealed class RuleCounter
{
    private readonly Dictionary<string, RuleCount> each = new(StringComparer.Ordinal);

    public RuleCount All { get; private set; } = RuleCount.None;

    public IReadOnlyDictionary<string, RuleCount> Rules => each;

    public void Recheck(Decision? decision)
    {
        if (decision?.Recheck is { } recheck)
        {
            Count(decision.RecheckAskedBy.DefaultIfEmpty(recheck.Rule), new(1, 0, 0, 0));
        }
    }

    public void AskAgain(Decision decision)
    {
        if (decision.Outcome == Outcome.AskAgain)
        {
            Count(Makers(decision), new(0, 0, 0, 1));
        }
    }

    public void Report(Decision? decision)
    {
        if (decision is not null)
        {
            Count(Makers(decision), decision.Outcome == Outcome.ReportNow ? new(0, 0, 1, 0) : new(0, 1, 0, 0));
        }
    }

    private static IEnumerable<string> Makers(Decision decision) => decision.Reasons.Where(r => r.Outcome == decision.Outcome).Select(r => r.Rule);

    private void Count(IEnumerable<string> rules, RuleCount one)
    {
        All += one;
        foreach (string rule in rules.Distinct())
        {
            each[rule] = each.GetValueOrDefault(rule, RuleCount.None) + one;
        }
    }
}
