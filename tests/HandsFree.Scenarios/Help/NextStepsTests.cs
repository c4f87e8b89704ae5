using HandsFree.App.Checks;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Help;

public sealed class NextStepsTests
{
    private static readonly CheckResult[] AllWell = [new("home", CheckState.Ok, ""), new("people", CheckState.Ok, ""), new("microphone", CheckState.Ok, ""), new("voice", CheckState.Ok, "flite")];

    [Fact]
    public void Where_all_is_well_the_round_is_next() => NextSteps.Of(AllWell)[0].ShouldStartWith("go round: handsfree round");

    [Fact]
    public void What_is_broken_comes_before_everything_and_nobody_is_sent_on_a_round()
    {
        IReadOnlyList<string> steps = NextSteps.Of([.. AllWell, new("journal", CheckState.Failed, "entry 3 was changed")]);

        steps.ShouldBe(["mend \"journal\": entry 3 was changed"]);
        NextSteps.Of([.. AllWell.Select(r => r with { State = CheckState.Warning }), new("journal", CheckState.Failed, "entry 3 was changed")])[0]
            .ShouldBe("mend \"journal\": entry 3 was changed");
    }

    [Fact]
    public void A_new_home_is_led_in_its_order_and_by_three_steps_at_most()
    {
        IReadOnlyList<string> steps = NextSteps.Of([.. AllWell.Select(r => r with { State = CheckState.Warning }).Reverse()]);

        steps.Count.ShouldBe(3);
        steps[0].ShouldContain("residents import");
        steps[1].ShouldContain("--role supervisor");
        steps[2].ShouldContain("devices");
    }

    [Fact]
    public void Check_ends_with_them()
    {
        using TemporaryHome home = new();

        string[] lines = CommandRun.Of(home, "check", "--sound", "none").Lines;

        lines.ShouldContain("Next:");
        int next = Array.IndexOf(lines, "Next:");
        lines.Length.ShouldBeLessThanOrEqualTo(next + 4);
        lines[next + 1].ShouldStartWith("1. bring the residents in");
        lines[next + 2].ShouldContain("--role supervisor");
    }
}
