using HandsFree.Core.Rules.Evaluation;

namespace HandsFree.Core.Rules.Files;

/// <summary>Reads one whole rule.</summary>
internal sealed class RuleParser(IReadOnlyDictionary<string, RecheckInstruction> instructions)
{
    private const int MiddlePriority = 50;

    /// <summary>The rule, or null where its test could not be read; every error is added.</summary>
    public Rule? Parse(ObjectReader from, RuleAuthority authority, string group, bool approvalsAllowed = false)
    {
        string id = from.RequiredText("id");
        string text = from.RequiredText("text");
        string source = from.RequiredText("source");
        var test = TestParser.Parse(from, authority == RuleAuthority.Ordered, sideNeeded: false);
        var when = from.Object("when") is { } conditions ? ConditionsParser.Parse(conditions, test) : new();
        var mark = Required(from, "mark", RuleVocabulary.Marks);
        var action = Required(from, "action", RuleVocabulary.Actions);
        var afterwards = from.Choice("afterwards", RuleVocabulary.Actions);
        var recheck = Recheck(from);
        bool danger = from.Truth("danger") ?? false;
        bool set = from.Truth("set") ?? false;
        bool stays = from.Truth("stays beside home limits") ?? false;
        bool beyond = from.Truth("beyond plans") ?? false;
        bool @fixed = !approvalsAllowed && (from.Truth("fixed") ?? false);
        bool off = from.Truth("off") ?? false;
        int priority = from.Whole("priority", 1, 99) ?? MiddlePriority;
        string? changed = approvalsAllowed ? ApprovalParser.Parse(from)?.InWords : null;
        from.NothingElse();

        if (test is { Side: null } && when.Equals(new RuleConditions { Also = when.Also, OneOf = when.OneOf }))
        {
            from.Fault("a rule needs a threshold or a condition; this one would speak of every reading");
        }

        if (afterwards is not null && recheck is null)
        {
            from.Fault("\"afterwards\" is what a rule decides after its rechecks; it needs a \"recheck\"", from.LineOf("afterwards"));
        }

        if (beyond && test is { Side: null } or { Of.Limits: null })
        {
            from.Fault("\"beyond plans\" needs a threshold on a value that can be planned", from.LineOf("beyond plans"));
        }

        if (danger && action != Outcome.ReportNow)
        {
            from.Fault("a danger value must be \"report now\"", from.LineOf("danger"));
        }

        return test is null ? null : new Rule
        {
            Id = id,
            Text = text,
            Group = group,
            Authority = authority,
            Test = test,
            When = when,
            Action = action ?? default,
            Afterwards = afterwards,
            Recheck = recheck,
            Danger = danger,
            Set = set,
            StaysBesideHomeLimits = stays,
            BeyondPlans = beyond,
            Fixed = @fixed,
            Priority = priority,
            Source = source,
            Mark = mark ?? default,
            Off = off,
            Changed = changed,
        };
    }

    /// <summary>The recheck of a rule or of a change to one; null where there is none.</summary>
    public RuleRecheck? Recheck(ObjectReader from)
    {
        if (from.Object("recheck") is not { } recheck)
        {
            return null;
        }

        string name = recheck.RequiredText("instruction");
        int times = recheck.Whole("times", 1, RuleAsking.MostRechecks) ?? 1;
        bool unless = recheck.Truth("unless counted 60 seconds") ?? false;
        bool wait = recheck.Truth("wait for the rest") ?? false;
        recheck.NothingElse();
        if (instructions.TryGetValue(name, out var instruction))
        {
            return new(instruction, times, unless, wait);
        }

        if (name.Length > 0)
        {
            recheck.Fault($"\"{name}\" is no recheck instruction; known: {string.Join(", ", instructions.Keys)}", recheck.LineOf("instruction"));
        }

        return null;
    }

    private static T? Required<T>(ObjectReader from, string name, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        if (!from.Has(name))
        {
            from.Fault($"\"{name}\" is missing; one of: {string.Join(", ", words.Keys)}");
        }

        return from.Choice(name, words);
    }
}
