using HandsFree.Core.Quantities;
using HandsFree.Core.Rules.Figures;

namespace HandsFree.Core.Rules.Evaluation;

/// <summary>Whether the conditions of a rule hold in a situation.</summary>
internal static class Conditions
{
    public static bool Hold(Rule rule, Situation s)
    {
        var when = rule.When;
        return (when.Sites is null || when.Sites.Contains(s.How.Site))
            && (when.RoomAir is null || when.RoomAir == s.Oxygen.IsRoomAir)
            && (when.Machine is null || when.Machine == s.How.Machine)
            && (when.Uneven is null || when.Uneven == s.How.Uneven)
            && (!when.UnevenIsNew || UnevenIsNew(s))
            && (when.CountedSeconds is null || (s.How.CountedSeconds is { } seconds && when.CountedSeconds.Contains(seconds)))
            && (!when.ArmNotToBeUsed || (s.How.Arm is { } arm && s.Context.Resident.ArmsNotToBeUsed.ContainsKey(arm)))
            && (when.Symptoms is null || when.Symptoms.Any(s.Context.Symptoms.Contains))
            && (when.ResidentHas is null || when.ResidentHas.Any(s.Context.Resident.Conditions.Contains))
            && (!when.NewForResident || IsNew(rule.Test, s))
            && when.Also.All(t => Holds(t, s))
            && (when.OneOf.Count == 0 || when.OneOf.Any(t => Holds(t, s)));
    }

    /// <summary>Whether a further test holds, on this reading, on another of the same set or on an earlier one. Where a limit was
    /// ordered for its figure, the figure must lie beyond that too.</summary>
    public static bool Holds(RuleTest test, Situation s)
    {
        if (test.Earlier is { } window)
        {
            return test.Of.Signs is [var sign, ..] && s.Past(sign).Any(p =>
                s.Context.At - p.MeasuredAt >= window.AtLeast
                && s.Context.At - p.MeasuredAt <= window.AtMost
                && p.Reading.How.Site == s.How.Site
                && Beyond(test, s.At(p)));
        }

        return Member(test.Of, s) is { } member && Beyond(test, member);
    }

    /// <summary>The situation of the set in which the figure is to be looked for.</summary>
    public static Situation? Member(FigureKind figure, Situation s) =>
        figure.Signs.Count == 0 || figure.Signs.Contains(s.Sign) ? s : s.For(figure.Signs[0]);

    private static bool Beyond(RuleTest test, Situation s) =>
        test.Of.Of(s) is { } amount
        && test.Holds(amount)
        && (test.OrderFor(s.Context) is not { } order || test.HoldsForOrder(amount, test.LimitOf(order)));

    private static bool IsNew(RuleTest test, Situation s) =>
        test.Of.Limits is not { } value || UsualValues.Of(s, value) is not { } usual || !test.HoldsForUsual(usual);

    private static bool UnevenIsNew(Situation s) => !s.Past(VitalSign.Pulse).Any(p =>
        p.Reading.How.Uneven && s.Context.At - p.MeasuredAt >= Situation.SameSet);
}
