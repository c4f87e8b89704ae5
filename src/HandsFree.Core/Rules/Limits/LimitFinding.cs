using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules.Evaluation;

namespace HandsFree.Core.Rules.Limits;

/// <summary>Finds among the rules the innermost line on either side of a value.</summary>
internal static class LimitFinding
{
    public static ReportLimits Of(IEnumerable<Rule> rules, LimitedValue value, DecisionContext context, decimal? usual)
    {
        List<Rule> asked = [.. rules.Where(r => r.Test.Of.Limits == value && Asks(r, context, usual))];
        return new(
            asked.Where(r => r.Test.IsLow).Select(r => Line(r, context)).OfType<ReportLimit>().MaxBy(l => l.Number),
            asked.Where(r => !r.Test.IsLow).Select(r => Line(r, context)).OfType<ReportLimit>().MinBy(l => l.Number));
    }

    /// <summary>The innermost line of a side beyond which a value is reported now, orders left aside.</summary>
    public static ReportLimit? ReportNow(IEnumerable<Rule> rules, LimitedValue value, bool low, DecisionContext context)
    {
        DecisionContext unordered = context with { Resident = context.Resident with { OrderedLimits = [] } };
        IEnumerable<ReportLimit> lines = rules.Where(r => r.Test.Of.Limits == value && r.Test.IsLow == low && Asks(r, unordered, null))
            .Select(r => Line(r, unordered)).OfType<ReportLimit>().Where(l => l.Outcome == Outcome.ReportNow);
        return low ? lines.MaxBy(l => l.Number) : lines.MinBy(l => l.Number);
    }

    /// <summary>The line of a side that no plan reaches past, or null where that side has none.</summary>
    public static ReportLimit? BeyondPlans(IEnumerable<Rule> rules, LimitedValue value, bool low)
    {
        IEnumerable<ReportLimit> lines = rules.Where(r => r.BeyondPlans && !r.Off && r.Test.Of.Limits == value && r.Test.IsLow == low)
            .Select(r => new ReportLimit(r.Test.Number, r.Test.Side is Side.AtLeast or Side.AtMost, r.Action, r.Authority, r.Id, null));
        return low ? lines.MaxBy(l => l.Number) : lines.MinBy(l => l.Number);
    }

    /// <summary>Whether a rule tells a nurse of a single value of this resident, whatever else is known.</summary>
    private static bool Asks(Rule rule, DecisionContext context, decimal? usual)
    {
        RuleConditions when = rule.When;
        bool tells = (rule.Afterwards ?? rule.Action) is Outcome.ReportThisShift or Outcome.ReportNow;
        bool plain = when is { Sites: null, Machine: null, Uneven: null, UnevenIsNew: false, CountedSeconds: null, ArmNotToBeUsed: false, Symptoms: null }
            && !when.Tests.Any();
        return tells
            && plain
            && !rule.Off
            && !rule.Set
            && !rule.BeyondPlans
            && rule.Test is { Side: not null, Earlier: null }
            && rule.Authority is RuleAuthority.Ordered or RuleAuthority.Home or RuleAuthority.Default
            && (when.RoomAir is null || when.RoomAir == (context.Resident.UsualOxygen ?? OxygenSupply.RoomAir).IsRoomAir)
            && (when.ResidentHas is null || when.ResidentHas.Any(context.Resident.Conditions.Contains))
            && (!when.NewForResident || usual is not { } median || !rule.Test.HoldsForUsual(median));
    }

    private static ReportLimit? Line(Rule rule, DecisionContext context)
    {
        OrderedLimit? order = rule.Test.OrderFor(context);
        bool included = rule.Test.Side is Side.AtLeast or Side.AtMost;
        Outcome outcome = rule.Afterwards ?? rule.Action;
        return (order, rule.Test.Ordered) switch
        {
            ({ } ordered, true) => new(rule.Test.LimitOf(ordered), included, outcome, rule.Authority, rule.Id, ordered.OrderedBy),
            (null, false) => new(rule.Test.Number, included, outcome, rule.Authority, rule.Id, null),
            _ => null, // an order that is not there, or a limit that an order replaces
        };
    }
}
