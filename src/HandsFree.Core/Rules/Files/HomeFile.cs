using HandsFree.Core.Rules.Evaluation;

namespace HandsFree.Core.Rules.Files;

/// <summary>The home's own file: it changes default rules by their id and adds limits of its own.</summary>
internal static class HomeFile
{
    private const string HomeGroup = "home";

    /// <summary>The rules with the home's changes and additions; errors are added to the reader's list.</summary>
    public static List<Rule> Apply(ObjectReader file, RuleParser parser, List<Rule> defaults)
    {
        file.Text("home");
        var overrides = file.Objects("override");
        var additions = file.Objects("rules");
        file.NothingElse();
        var rules = new List<Rule>(defaults);
        var changed = new HashSet<string>(StringComparer.Ordinal);
        foreach (var item in overrides)
        {
            string id = item.RequiredText("id");
            int at = rules.FindIndex(r => r.Id == id);
            if (at < 0)
            {
                item.Fault($"no default rule has the id \"{id}\"; \"override\" changes one that is there, \"rules\" adds one", item.LineOf("id"));
            }
            else if (!changed.Add(id))
            {
                item.Fault($"\"{id}\" is overridden twice; keep one", item.LineOf("id"));
            }
            else
            {
                rules[at] = Changed(rules[at], item, parser);
            }
        }

        foreach (var item in additions)
        {
            if (parser.Parse(item, RuleAuthority.Home, HomeGroup, approvalsAllowed: true) is { } rule)
            {
                Replace(rule, item, rules);
                RulebookLoader.Add(rule, item, rules);
            }
        }

        return rules;
    }

    private static Rule Changed(Rule rule, ObjectReader item, RuleParser parser)
    {
        var changed = rule with
        {
            Test = NewThreshold(rule.Test, item),
            Off = item.Truth("off") ?? rule.Off,
            Action = item.Choice("action", RuleVocabulary.Actions) ?? rule.Action,
            Priority = item.Whole("priority", 1, 99) ?? rule.Priority,
            Recheck = parser.Recheck(item) ?? rule.Recheck,
        };
        var approval = ApprovalParser.Parse(item);
        item.NothingElse();
        if (rule.Fixed)
        {
            item.Fault($"\"{rule.Id}\" can't be changed or switched off ({rule.Text}); leave this entry out", item.LineOf("id"));
            return rule;
        }

        if (rule.Danger && changed.Action != Outcome.ReportNow)
        {
            item.Fault("a danger value must stay \"report now\"", item.LineOf("action"));
        }

        if (approval is null && IsWeaker(rule, changed))
        {
            item.Fault($"this switches off, weakens or delays \"{rule.Id}\", which reports now; write \"approved by\" (a name) and \"approved on\" (a day) beside it");
        }

        string words = approval?.InWords ?? "not weaker than the default";
        return changed with
        {
            Changed = $"changed by the home's file, {words}; default: {RuleWords.Threshold(rule.Test)}",
            Source = $"the home's file ({words}), in place of: {rule.Source}",
        };
    }

    private static RuleTest NewThreshold(RuleTest test, ObjectReader item)
    {
        if (!item.Has("threshold"))
        {
            return test;
        }

        if (test.Side is not null && !test.Ordered)
        {
            TestParser.CheckUnit(item, test.Of);
            return TestParser.Threshold(item, test, "threshold") ?? test;
        }

        item.Any("threshold");
        item.Any("unit");
        item.Fault("this rule has no threshold of its own to change; leave \"threshold\" and \"unit\" out", item.LineOf("threshold"));
        return test;
    }

    /// <summary>A home limit takes the place of the defaults for the same side of the same value that decide the same under the
    /// same conditions. Defaults that decide otherwise stay: a wide "report this shift" does not silence a "report now".</summary>
    private static void Replace(Rule added, ObjectReader item, List<Rule> rules)
    {
        for (int i = 0; i < rules.Count; i++)
        {
            var rule = rules[i];
            bool same = rule.Authority == RuleAuthority.Default
                && !rule.Danger
                && !rule.StaysBesideHomeLimits
                && added is { Off: false, Danger: false }
                && rule.Action == added.Action
                && rule.Test.Of == added.Test.Of
                && rule.Test.Side is not null
                && added.Test.Side is not null
                && rule.Test.IsLow == added.Test.IsLow
                && RuleWords.Conditions(rule.When) == RuleWords.Conditions(added.When);
            if (!same)
            {
                continue;
            }

            if (added.Changed is null && IsWeaker(rule, added))
            {
                item.Fault($"this limit is weaker than \"{rule.Id}\" ({RuleWords.Threshold(rule.Test)}), which reports now and which it replaces; write \"approved by\" (a name) and \"approved on\" (a day) beside it");
            }

            rules[i] = rule with { Off = true, Changed = $"replaced by the home's \"{added.Id}\"" };
        }
    }

    private static bool IsWeaker(Rule rule, Rule changed)
    {
        if (rule.Off || Math.Max((int)rule.Action, (int)(rule.Afterwards ?? rule.Action)) < (int)Outcome.ReportNow || rule.Action == Outcome.AskAgain)
        {
            return false;
        }

        bool laxer = rule.Test.IsLow
            ? changed.Test.Number < rule.Test.Number || changed.Test.Celsius < rule.Test.Celsius
            : changed.Test.Number > rule.Test.Number || changed.Test.Celsius > rule.Test.Celsius;
        bool stricter = changed.Test.Side is Side.Above or Side.Below && rule.Test.Side is Side.AtLeast or Side.AtMost;
        return changed.Off || changed.Action < rule.Action || laxer || (stricter && changed.Test.Number == rule.Test.Number) || IsLater(rule.Recheck, changed.Recheck);
    }

    /// <summary>Whether a report waits longer for its rechecks than before.</summary>
    private static bool IsLater(RuleRecheck? before, RuleRecheck? now) =>
        now is not null
        && (before is null
            || now.Times > before.Times
            || now.Instruction.After > before.Instruction.After
            || (before.UnlessCounted60 && !now.UnlessCounted60));
}
