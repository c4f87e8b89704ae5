using HandsFree.Core.Rules.Evaluation;

namespace HandsFree.Core.Rules.Files;

/// <summary>Reads the conditions of a rule.</summary>
internal static class ConditionsParser
{
    public static RuleConditions Parse(ObjectReader from, RuleTest? test)
    {
        var when = new RuleConditions
        {
            Sites = from.Choices("site", RuleVocabulary.Sites),
            RoomAir = from.Choice("oxygen", RuleVocabulary.Oxygen),
            Machine = from.Truth("machine"),
            Uneven = from.Truth("uneven"),
            UnevenIsNew = from.Truth("uneven is new") ?? false,
            CountedSeconds = from.Choices("counted seconds", RuleVocabulary.Seconds),
            ArmNotToBeUsed = from.Truth("arm not to be used") ?? false,
            Symptoms = from.Choices("symptoms", RuleVocabulary.Symptoms),
            ResidentHas = from.Choices("resident has", RuleVocabulary.Conditions),
            NewForResident = from.Truth("new for resident") ?? false,
            Also = Tests(from, "also"),
            OneOf = Tests(from, "one of"),
        };
        if (when.NewForResident && test is { Of.Limits: null })
        {
            from.Fault($"\"new for resident\" needs a value that has a usual value; \"{test.Of.Name}\" has none; leave it out", from.LineOf("new for resident"));
        }

        from.NothingElse();
        return when;
    }

    private static List<RuleTest> Tests(ObjectReader from, string name)
    {
        var tests = new List<RuleTest>();
        foreach (var item in from.Objects(name))
        {
            var test = TestParser.Parse(item, orderedFile: false, sideNeeded: true);
            var window = Earlier(item);
            item.NothingElse();
            if (test is not null)
            {
                tests.Add(test with { Earlier = window });
            }
        }

        return tests;
    }

    private static EarlierWindow? Earlier(ObjectReader item)
    {
        if (item.Object("earlier") is not { } earlier)
        {
            return null;
        }

        decimal? least = earlier.Number("at least hours", 0, 24 * 366);
        decimal? most = earlier.Number("at most hours", 0, 24 * 366);
        earlier.NothingElse();
        if (least is { } from && most is { } to && from <= to)
        {
            return new(TimeSpan.FromHours((double)from), TimeSpan.FromHours((double)to));
        }

        earlier.Fault("needs \"at least hours\" and \"at most hours\", the first not greater than the second");
        return null;
    }
}
