using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>A reading that is not reported because a nurse planned it so says so, in the ear, each time.</summary>
public sealed class PlanNamedTests
{
    private static Talk Planned() => new Talk(
        rules: Rulebook.Load().Rulebook,
        past: [new PlanMade("n-1", "nurse-1", TestHome.Morning.AddHours(-1), "r-7", "x", LimitedValue.Systolic, null, 200, TestHome.Morning.AddHours(6), "")])
        .Go("room seven", "yes", "february twenty ninth");

    [Fact]
    public void A_silenced_reading_names_the_plan()
    {
        Talk talk = Planned().Go("blood pressure one ninety over eighty", "one nine zero over eight zero");

        talk.Said.ShouldContain("Nurse's plan: upper pressure, at most two zero zero, until 14:00.");
        talk.Journal.OfType<ReportOpened>().ShouldBeEmpty();
    }

    [Fact]
    public void Another_reading_names_none() =>
        Planned().Go("blood pressure one forty over eighty", "yes").Said.ShouldNotContain("plan");
}
