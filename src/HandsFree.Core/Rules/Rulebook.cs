using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules.Evaluation;
using HandsFree.Core.Rules.Figures;
using HandsFree.Core.Rules.Files;
using HandsFree.Core.Rules.Limits;

namespace HandsFree.Core.Rules;

/// <summary>The rules in force: the program's defaults with their sources and what the home's file adds or changes.</summary>
public sealed class Rulebook : IRulebook
{
    private readonly IReadOnlyList<Rule> rules;

    internal Rulebook(IReadOnlyList<Rule> rules)
    {
        this.rules = rules;
        Hash = RuleContent.Hash(rules);
    }

    /// <inheritdoc/>
    public string Hash { get; }

    /// <summary>The defaults, with the home's file where there is one.</summary>
    /// <returns>The rulebook, or every error with its file, line and reason.</returns>
    public static RulebookLoading Load(RuleFile? home = null) => RulebookLoader.Load(DefaultFiles.Read(), home);

    /// <summary>Rules from other files than the program's own: tests and trials.</summary>
    /// <param name="defaults">Rule files and the file of recheck instructions.</param>
    /// <param name="home">The home's file, or null.</param>
    public static RulebookLoading Load(IReadOnlyList<RuleFile> defaults, RuleFile? home = null) => RulebookLoader.Load(defaults, home);

    /// <summary>The program's own rule files, embedded.</summary>
    public static IReadOnlyList<RuleFile> Defaults() => DefaultFiles.Read();

    /// <inheritdoc/>
    public Decision Decide(Reading reading, DecisionContext context)
    {
        var situation = new Situation(reading, context);
        bool danger = false;
        var hits = new List<Hit>();
        foreach (var hit in rules.Select(r => RuleAsking.Ask(r, situation)).OfType<Hit>())
        {
            danger |= hit.Danger;
            hits.Add(hit);
        }

        // What can't be, or can't come from this method, is said again; what it would mean is not asked.
        foreach (var authority in (RuleAuthority[])[RuleAuthority.Entry, RuleAuthority.Method])
        {
            var refusing = hits.FindAll(h => h.Rule.Authority == authority && h.Outcome == Outcome.AskAgain);
            if (refusing.Count > 0)
            {
                bool canBe = refusing.TrueForAll(h => h.Rule.Authority != RuleAuthority.Entry || h.Rule.Afterwards is not null);
                return Weighing.Decide(refusing, danger && canBe, Hash);
            }
        }

        return Weighing.Decide(hits, danger, Hash);
    }

    /// <summary>The lines beyond which a nurse is told of a single value of a resident: her orders, the home's limits, the defaults.</summary>
    /// <param name="value">Of which number.</param>
    /// <param name="context">The resident and the moment.</param>
    /// <param name="usual">What is usual for her, in the unit of the value; null where it is not known.</param>
    public ReportLimits LimitsOf(LimitedValue value, DecisionContext context, decimal? usual) => LimitFinding.Of(rules, value, context, usual);

    /// <summary>The innermost line of a side beyond which a value is reported now, orders and plans left aside; null where there is none.</summary>
    /// <param name="value">Of which number.</param>
    /// <param name="low">The lower side, else the upper one.</param>
    /// <param name="context">The resident and the moment.</param>
    public ReportLimit? ReportNowOf(LimitedValue value, bool low, DecisionContext context) => LimitFinding.ReportNow(rules, value, low, context);

    /// <summary>The line of a side that is reported whatever is planned; null where that side has none.</summary>
    public ReportLimit? BeyondPlansOf(LimitedValue value, bool low) => LimitFinding.BeyondPlans(rules, value, low);

    /// <summary>Every rule, in the order in which they are asked, as a person may read it.</summary>
    public IReadOnlyList<RuleListing> Describe() =>
    [
        .. rules.Select(r => new RuleListing(
            r.Id,
            r.Group,
            r.Authority,
            r.Text,
            RuleWords.Threshold(r.Test),
            RuleWords.Conditions(r.When),
            r.Action,
            r.Danger,
            r.Recheck?.Instruction.Say,
            r.Afterwards,
            r.Priority,
            r.Source,
            r.Mark,
            !r.Off,
            r.Changed)),
    ];
}
