using HandsFree.Core.Observations;
using HandsFree.Core.Rules.Evaluation;

namespace HandsFree.Core.Rules.Files;

/// <summary>The words of rule files and what they stand for.</summary>
internal static class RuleVocabulary
{
    public static IReadOnlyDictionary<string, Outcome> Actions { get; } = new Dictionary<string, Outcome>
    {
        ["accept"] = Outcome.Accept,
        ["ask again"] = Outcome.AskAgain,
        ["report this shift"] = Outcome.ReportThisShift,
        ["report now"] = Outcome.ReportNow,
    };

    public static IReadOnlyDictionary<string, RuleMark> Marks { get; } = new Dictionary<string, RuleMark>
    {
        ["published"] = RuleMark.Published,
        ["from memory"] = RuleMark.FromMemory,
        ["common practice, no source"] = RuleMark.CommonPractice,
    };

    public static IReadOnlyDictionary<string, RuleAuthority> Authorities { get; } = new Dictionary<string, RuleAuthority>
    {
        ["entry"] = RuleAuthority.Entry,
        ["method"] = RuleAuthority.Method,
        ["ordered"] = RuleAuthority.Ordered,
        ["default"] = RuleAuthority.Default,
    };

    public static IReadOnlyDictionary<string, Side> Sides { get; } = new Dictionary<string, Side>
    {
        ["above"] = Side.Above,
        ["at least"] = Side.AtLeast,
        ["below"] = Side.Below,
        ["at most"] = Side.AtMost,
    };

    public static IReadOnlyDictionary<string, TemperatureSite?> Sites { get; } = new Dictionary<string, TemperatureSite?>
    {
        ["mouth"] = TemperatureSite.Mouth,
        ["armpit"] = TemperatureSite.Armpit,
        ["ear"] = TemperatureSite.Ear,
        ["forehead"] = TemperatureSite.Forehead,
        ["rectum"] = TemperatureSite.Rectum,
        ["unsaid"] = null,
    };

    public static IReadOnlyDictionary<string, bool> Oxygen { get; } = new Dictionary<string, bool>
    {
        ["room air"] = true,
        ["on oxygen"] = false,
    };

    public static IReadOnlyDictionary<string, string> Symptoms { get; } =
        Rules.Symptoms.All.ToDictionary(s => s);

    /// <summary>What the roster can note of a resident, and a rule can ask for.</summary>
    public static IReadOnlyDictionary<string, string> Conditions { get; } =
        Residents.Resident.KnownConditions.ToDictionary(c => c);

    public static IReadOnlyDictionary<string, int> Seconds { get; } = new Dictionary<string, int>
    {
        ["15"] = 15,
        ["30"] = 30,
        ["60"] = 60,
    };
}
