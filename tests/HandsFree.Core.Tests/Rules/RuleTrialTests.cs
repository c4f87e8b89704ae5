using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Trials;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

public class RuleTrialTests
{
    private static readonly TrialReading[] Past =
    [
        Taken("r1", 0, "pulse 72"),
        Taken("r1", 2, "oxygen 97 air"),
        Taken("r1", 480, "pulse 104"), // above 100: recheck, then this shift
        Taken("r1", 483, "pulse 106 seconds 60", recheck: true), // the recheck: this shift
        Taken("r2", 10, "temperature 101.2 F mouth"), // above 101: now, and above 100: this shift
        Taken("r2", 12, "pulse 16"), // hardly a pulse: asked again
    ];

    [Fact]
    public void Sets_rechecks_and_reports_are_counted_rule_by_rule()
    {
        RuleTrial trial = RuleTrial.Of(TestRules.Defaults, Past, _ => Notation.Resident(""));

        (trial.Sets, trial.Readings).ShouldBe((3, 6));
        trial.All.ShouldBe(new RuleCount(Rechecks: 2, ReportsThisShift: 2, ReportsNow: 1, AskedAgain: 1));
        trial.Rules.ShouldBe(
            [
                new("pulse.fast", new(1, 2, 0, 0)),
                new("temperature.now.high", new(0, 0, 1, 0)),
                new("pulse.entry.low", new(1, 0, 0, 1)),
            ],
            ignoreOrder: true);
    }

    [Fact]
    public void A_changed_file_is_seen_in_the_counts()
    {
        Rulebook changed = TestRules.WithHome("""{ "override": [ { "id": "pulse.fast", "threshold": 105, "unit": "/min" } ] }""");

        RuleTrial.Of(changed, Past, _ => Notation.Resident("")).Rules["pulse.fast"].ShouldBe(new RuleCount(0, 1, 0, 0));
    }

    [Fact]
    public void The_orders_of_the_resident_count() =>
        RuleTrial.Of(TestRules.Defaults, Past, id => Notation.Resident(id == "r1" ? "ordered pulse 50-110" : "")).Rules.ShouldNotContainKey("pulse.fast");

    private static TrialReading Taken(string resident, int minutes, string reading, bool recheck = false) =>
        new(resident, new(Notation.Reading(reading), Notation.Now.AddMinutes(minutes)), new HashSet<string>(), recheck);
}
