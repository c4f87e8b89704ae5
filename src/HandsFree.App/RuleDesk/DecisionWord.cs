using HandsFree.App.Composition;
using HandsFree.Core.Rules;

namespace HandsFree.App.RuleDesk;

/// <summary>A decision in one word: an accepted value that is to be measured again is a "recheck".</summary>
internal static class DecisionWord
{
    public const string Recheck = "recheck";

    /// <summary>From the mildest to the gravest; a value that is asked again is no news, a report is.</summary>
    public static IReadOnlyList<string> FromMildToGrave { get; } =
    [
        EnumWords.Of(Outcome.Accept), Recheck, EnumWords.Of(Outcome.AskAgain), EnumWords.Of(Outcome.ReportThisShift), EnumWords.Of(Outcome.ReportNow),
    ];

    public static string Of(Decision decision) =>
        decision is { Outcome: Outcome.Accept, Recheck: not null } ? Recheck : EnumWords.Of(decision.Outcome);
}
