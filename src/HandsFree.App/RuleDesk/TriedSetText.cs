using HandsFree.App.Composition;
using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Scores;

namespace HandsFree.App.RuleDesk;

/// <summary>A set that was tried, for a person: what is decided, then step by step who said what.</summary>
/// <param name="rules">The rules in force, to know at which step each stands.</param>
internal sealed class TriedSetText(IReadOnlyList<RuleListing> rules)
{
    private static readonly (RuleAuthority Authority, string Name)[] Steps =
    [
        (RuleAuthority.Entry, "entry limits"),
        (RuleAuthority.Method, "method"),
        (RuleAuthority.Ordered, "ordered limits"),
        (RuleAuthority.Home, "the home's limits"),
        (RuleAuthority.Default, "defaults"),
    ];

    private readonly Dictionary<string, RuleAuthority> authorities = rules.ToDictionary(r => r.Id, r => r.Authority);

    /// <summary>The lines.</summary>
    public IEnumerable<string> Of(TriedSet set)
    {
        foreach (TriedReading tried in set.Readings)
        {
            yield return $"{tried.Words}: {Head(tried.Decision)}";
            foreach (string line in StepLines(tried.Decision))
            {
                yield return line;
            }
        }

        if (set.Readings.Count > 1)
        {
            yield return $"all together: {set.Word}{(set.RecheckFirst ? ", after a recheck" : "")}";
        }

        if (set.News2 is { } parameters)
        {
            yield return News2.Of(parameters) is { } score
                ? $"NEWS2: {score.Total} ({score.Class}) [{News2Set.Source}]"
                : $"NEWS2: not computed, missing: {string.Join(", ", News2Set.Missing(parameters))}";
        }
    }

    private static string Head(Decision decision)
    {
        string danger = decision.Danger ? "danger value, use the call light now; " : "";
        return decision.Recheck is not { } recheck ? danger + DecisionWord.Of(decision)
            : decision.Outcome == Outcome.Accept ? $"{danger}recheck{When(recheck)}: {recheck.Instruction}"
            : $"{danger}{EnumWords.Of(decision.Outcome)}, after a recheck{When(recheck)}: {recheck.Instruction}";
    }

    private static string When(Recheck recheck) => recheck.After == TimeSpan.Zero ? "" : $" in {recheck.After.TotalMinutes:0} min";

    private IEnumerable<string> StepLines(Decision decision)
    {
        bool askedAgain = decision.Outcome == Outcome.AskAgain;
        List<string> silent = [];
        foreach ((RuleAuthority authority, string name) in Steps)
        {
            Reason[] said = [.. decision.Reasons.Where(r => authorities[r.Rule] == authority)];
            if (said.Length == 0)
            {
                silent.Add(name);
                continue;
            }

            if (silent.Count > 0)
            {
                yield return Silent(silent, notAsked: false);
                silent.Clear();
            }

            yield return $"  {name}:";
            foreach (Reason reason in said)
            {
                yield return $"    {reason.Rule} ({EnumWords.Of(reason.Outcome)}): {reason.Text} [{reason.Source}; {EnumWords.Of(reason.Mark)}]";
            }
        }

        if (silent.Count > 0)
        {
            yield return Silent(silent, askedAgain);
        }

        if (decision.Outcome != Outcome.Accept || decision.Recheck is not null)
        {
            yield return $"  decided by: {string.Join(", ", decision.Reasons.Where(r => r.Outcome == decision.Outcome).Select(r => r.Rule))}{First(decision)}";
        }
    }

    private static string Silent(List<string> steps, bool notAsked) =>
        $"  {string.Join(", ", steps)}: {(notAsked ? "not asked, the value is said again first" : "nothing to say")}";

    private static string First(Decision decision) => decision.Recheck is { } recheck ? $"; the recheck is asked for by {recheck.Rule}" : "";
}
