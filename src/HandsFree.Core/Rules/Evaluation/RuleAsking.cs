using HandsFree.Core.Residents;
using HandsFree.Core.Rules.Figures;

namespace HandsFree.Core.Rules.Evaluation;

/// <summary>Asks one rule about one situation.</summary>
internal static class RuleAsking
{
    /// <summary>No value is rechecked more often in one round.</summary>
    public const int MostRechecks = 2;

    /// <summary>What the rule says, or null where it is silent.</summary>
    public static Hit? Ask(Rule rule, Situation s)
    {
        if (rule.Off || !rule.Concerns(s.Sign) || Conditions.Member(rule.Test.Of, s) is not { } member)
        {
            return null;
        }

        if (rule.Test.Of.Of(member) is not { } amount)
        {
            return null;
        }

        var order = rule.Test.OrderFor(s.Context);
        if (rule.Test.Ordered)
        {
            return order is not null && rule.Test.HoldsForOrder(amount, rule.Test.LimitOf(order)) && Conditions.Hold(rule, member)
                ? Spoken(rule, s, amount, order)
                : null;
        }

        if (!rule.Test.Holds(amount) || !Conditions.Hold(rule, member))
        {
            return null;
        }

        if (rule.BeyondPlans)
        {
            return order?.Until is null ? null : Spoken(rule, s, amount, null);
        }

        if (order is null || !rule.YieldsToOrders)
        {
            return Spoken(rule, s, amount, null);
        }

        // An order replaces the limits below it on its side, whatever they decide. What is no mere limit (a set of values, a danger
        // value) speaks again where its value lies beyond the order.
        if (!rule.Test.HoldsForOrder(amount, rule.Test.LimitOf(order)))
        {
            return Replaced(rule, amount, order);
        }

        return rule.Set || rule.Danger ? Spoken(rule, s, amount, null) : null;
    }

    private static Hit Spoken(Rule rule, Situation s, Amount amount, OrderedLimit? order)
    {
        var recheck = RecheckOf(rule, s, amount);
        var outcome = recheck is null && rule.Afterwards is { } afterwards ? afterwards : rule.Action;
        string source = order is null ? rule.Source : $"ordered by {order.OrderedBy} on {order.OrderedOn:yyyy-MM-dd}; {rule.Source}";
        return new(rule, outcome, recheck, RuleWords.Reason(rule, s, amount, order), source, rule.Danger);
    }

    private static Hit Replaced(Rule rule, Amount amount, OrderedLimit order) => new(
        rule,
        Outcome.Accept,
        null,
        RuleWords.Replaced(rule, amount, order),
        $"ordered by {order.OrderedBy} on {order.OrderedOn:yyyy-MM-dd}, instead of: {rule.Source}",
        rule.Danger)
    {
        Silenced = order.Until is not null && (rule.Afterwards ?? rule.Action) is Outcome.ReportThisShift or Outcome.ReportNow ? order : null,
    };

    private static Recheck? RecheckOf(Rule rule, Situation s, Amount amount)
    {
        if (rule.Recheck is not { } recheck || (recheck.UnlessCounted60 && s.How.CountedSeconds == 60))
        {
            return null;
        }

        var after = recheck.WaitForRest
            ? TimeSpan.FromMinutes((double)(rule.Test.Number - amount.Number))
            : recheck.Instruction.After;
        bool later = after >= Situation.SameSet;
        return later || s.Context.RechecksDone < Math.Min(recheck.Times, MostRechecks)
            ? new(rule.Id, RecheckWords.Said(recheck.Instruction, s), after)
            : null;
    }
}
