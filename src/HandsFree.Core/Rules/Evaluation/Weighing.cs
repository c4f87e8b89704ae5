using HandsFree.Core.Residents;

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
        List<Hit> asking = Asking(ordered, worst);
        return new(worst, asking.Count > 0 ? asking[0].Recheck : null, [.. ordered.Select(h => h.ToReason())], danger, hash)
        {
            SilencedBy = worst is Outcome.ReportThisShift or Outcome.ReportNow ? [] : [.. ordered.Select(h => h.Silenced).OfType<OrderedLimit>().Distinct()],
            RecheckAskedBy = [.. asking.Select(h => h.Rule.Id)],
        };
    }

    /// <summary>The rules whose recheck comes first, the one that is said in front. A doubtful method is measured again before anything
    /// else. Otherwise a report waits for a recheck only if every rule that makes it asks for one: one that stands without makes it
    /// stand.</summary>
    private static List<Hit> Asking(List<Hit> ordered, Outcome worst)
    {
        if (ordered.FindAll(h => h.Rule.Authority == RuleAuthority.Method && h.Recheck is not null) is { Count: > 0 } method)
        {
            return method;
        }

        var makers = ordered.FindAll(h => h.Outcome == worst);
        return worst == Outcome.Accept ? [.. makers.FindAll(h => h.Recheck is not null).OrderBy(h => h.RecheckIsLater)]
            : makers.TrueForAll(h => h.Recheck is not null) ? makers
            : [];
    }
}
