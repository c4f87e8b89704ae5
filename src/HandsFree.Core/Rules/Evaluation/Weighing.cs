namespace HandsFree.Core.Rules.Evaluation;

/// <summary>Makes one decision of all that spoke: the worst wins, equal ones are all listed.</summary>
internal static class Weighing
{
    public static Decision Decide(IReadOnlyList<Hit> hits, bool danger, string hash)
    {
        List<Hit> ordered =
        [
            .. hits.OrderByDescending(h => h.Outcome)
                .ThenBy(h => h.Rule.Priority)
                .ThenBy(h => h.Rule.Authority)
                .ThenBy(h => h.Rule.Id, StringComparer.Ordinal),
        ];
        var worst = ordered.Count > 0 ? ordered[0].Outcome : Outcome.Accept;
        return new(worst, RecheckFirst(ordered, worst), [.. ordered.Select(h => h.ToReason())], danger, hash);
    }

    /// <summary>A doubtful method is measured again before anything else. Otherwise a report waits for a recheck only if every
    /// rule that makes it asks for one: one that stands without makes it stand.</summary>
    private static Recheck? RecheckFirst(List<Hit> ordered, Outcome worst)
    {
        if (ordered.Find(h => h.Rule.Authority == RuleAuthority.Method && h.Recheck is not null) is { } method)
        {
            return method.Recheck;
        }

        var makers = ordered.FindAll(h => h.Outcome == worst);
        if (worst == Outcome.Accept)
        {
            return (makers.Find(h => h.Recheck is not null && !h.RecheckIsLater) ?? makers.Find(h => h.Recheck is not null))?.Recheck;
        }

        return makers.TrueForAll(h => h.Recheck is not null) ? makers[0].Recheck : null;
    }
}
