using HandsFree.Core.Residents;
using HandsFree.Core.Rules.Figures;

namespace HandsFree.Core.Rules.Evaluation;

/// <summary>Rules in words.</summary>
internal static class RuleWords
{
    /// <summary>Why the rule spoke: its text, the figure, the side and the threshold.</summary>
    public static string Reason(Rule rule, Situation s, Amount amount, OrderedLimit? order)
    {
        string arm = rule.When.ArmNotToBeUsed && s.How.Arm is { } used ? $" ({s.Context.Resident.ArmsNotToBeUsed[used]})" : "";
        if (rule.Test.Side is null)
        {
            return rule.Text + arm;
        }

        string threshold = order is null
            ? rule.Test.Of.Said(rule.Test.Threshold(amount.Celsius), amount.Celsius)
            : $"the ordered {rule.Test.Of.Said(rule.Test.LimitOf(order), false)}";
        return $"{rule.Text}: {rule.Test.Of.Name} {rule.Test.Of.Said(amount.Number, amount.Celsius)}, {rule.Test.SideInWords} {threshold}{arm}";
    }

    /// <summary>Why a rule that would have spoken did not.</summary>
    public static string Replaced(Rule rule, Amount amount, OrderedLimit order) =>
        $"{rule.Test.Of.Name} {rule.Test.Of.Said(amount.Number, amount.Celsius)} is within the ordered limit of "
        + $"{rule.Test.Of.Said(rule.Test.LimitOf(order), false)}, which replaces{(rule.Danger ? " all but the words" : "")}: {rule.Text} ({Threshold(rule.Test)})";

    /// <summary>Figure, side, threshold and unit of a test.</summary>
    public static string Threshold(RuleTest test)
    {
        if (test.Side is null)
        {
            return test.Of.Name;
        }

        string number = test.Ordered
            ? "what was ordered"
            : test.Of.IsTemperature
                ? $"{test.Of.Said(test.Number, false)} ({test.Of.Said(test.Celsius, true)})"
                : test.Of.Said(test.Number, false);
        string when = test.Earlier is { } window
            ? $" {window.AtLeast.TotalHours:0} to {window.AtMost.TotalHours:0} hours before, same site"
            : "";
        return $"{test.Of.Name} {test.SideInWords} {number}{when}";
    }

    /// <summary>The conditions beside the threshold; empty for none.</summary>
    public static string Conditions(RuleConditions when)
    {
        var parts = new List<string>();
        if (when.Sites is { } sites)
        {
            parts.Add("site " + string.Join(" or ", sites.Select(x => x is { } site ? site.ToString().ToLowerInvariant() : "unsaid")));
        }

        Add(when.RoomAir == true, "on room air");
        Add(when.RoomAir == false, "on oxygen");
        Add(when.Machine == true, "read from a machine");
        Add(when.Machine == false, "taken by hand");
        Add(when.Uneven == true, "uneven");
        Add(when.Uneven == false, "even");
        Add(when.UnevenIsNew, "unevenness new for the resident");
        Add(when.CountedSeconds is not null, $"counted for {string.Join(" or ", when.CountedSeconds ?? [])} seconds");
        Add(when.ArmNotToBeUsed, "on an arm not to be used");
        Add(when.Symptoms is not null, "with " + string.Join(" or ", when.Symptoms ?? []));
        Add(when.ResidentHas is not null, "for residents with " + string.Join(" or ", when.ResidentHas ?? []));
        Add(when.NewForResident, "new for the resident");
        parts.AddRange(when.Also.Select(Threshold));
        Add(when.OneOf.Count > 0, "one of: " + string.Join(" / ", when.OneOf.Select(Threshold)));
        return string.Join("; ", parts);

        void Add(bool holds, string words)
        {
            if (holds)
            {
                parts.Add(words);
            }
        }
    }
}
