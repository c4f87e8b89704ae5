using HandsFree.Core.Rules;
using Shouldly;

namespace HandsFree.Core.Tests.Rules;

internal static class TestRules
{
    public static Rulebook Defaults { get; } = Loaded(Rulebook.Load());

    public static Rulebook WithHome(string text) => Loaded(Rulebook.Load(new RuleFile("home.json", text)));

    public static Rulebook Loaded(RulebookLoading loading)
    {
        loading.Errors.ShouldBeEmpty();
        return loading.Rulebook.ShouldNotBeNull();
    }
}
