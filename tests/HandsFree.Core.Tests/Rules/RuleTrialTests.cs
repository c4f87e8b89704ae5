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
        Taken("r1", 483, "pulse 106 seconds 60"), // the recheck: this shift
        Taken("r2", 10, "temperature 101.2 F mouth"), // above 101: now, and above 100: this shift
        Taken("r2", 12, "pulse 16"), // hardly a pulse: asked again
    ];

    [Fact]
    public void Sets_rechecks_and_reports_are_counted_rule_by_rule()
    {
        RuleTrial trial = RuleTrial.Of(TestRules.Defaults, Past, _ => Notation.Resident(""));

        (trial.Sets, trial.Readings).ShouldBe((3, 6));
        trial.All.ShouldBe(new RuleCount(Rechecks: 2, ReportsThisShift: 1, ReportsNow: 1, AskedAgain: 1));
        trial.Rules.ShouldBe(
            [
                new("pulse.fast", new(1, 1, 0, 0)),
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

    [Fact]
    public void A_recheck_that_comes_back_normal_leaves_no_report()
    {
        RuleTrial trial = Of(Taken("r1", 0, "pulse 104"), Taken("r1", 3, "pulse 96 seconds 60"));
        trial.Rules["pulse.fast"].ShouldBe(new RuleCount(1, 0, 0, 0));
        trial.All.ShouldBe(new RuleCount(1, 0, 0, 0));
    }

    [Fact]
    public void A_recheck_that_is_not_among_the_readings_leaves_the_report_that_would_have_come() =>
        Of(Taken("r1", 0, "pulse 104"), Taken("r1", 600, "pulse 96")).Rules["pulse.fast"].ShouldBe(new RuleCount(1, 1, 0, 0));

    [Fact]
    public void Two_rechecks_of_a_sign_at_most_whichever_rules_ask()
    {
        RuleTrial trial = Of(
            Taken("r1", 0, "respirations 16 machine"), Taken("r1", 3, "respirations 16 seconds 30"), Taken("r1", 6, "respirations 16 machine"));
        trial.All.ShouldBe(new RuleCount(2, 0, 0, 0));
        trial.Rules.ShouldBe([new("respirations.method.machine", new(1, 0, 0, 0)), new("respirations.method.30-seconds", new(1, 0, 0, 0))]);
    }

    [Fact]
    public void What_is_reported_is_not_reported_again_in_the_same_set_unless_it_is_graver()
    {
        Of(Taken("r1", 0, "temperature 100.6 F mouth"), Taken("r1", 20, "temperature 100.7 F mouth")).All.ReportsThisShift.ShouldBe(1);
        Of(Taken("r1", 0, "temperature 100.6 F mouth"), Taken("r1", 20, "temperature 101.2 F mouth")).All
            .ShouldBe(new RuleCount(0, 1, 1, 0));
    }

    [Fact]
    public void A_recheck_for_which_two_rules_ask_counts_for_both_and_once_all_together()
    {
        RuleTrial trial = Of(Taken("r1", 0, "pulse 104 counted 26 seconds 15 uneven"));
        trial.All.Rechecks.ShouldBe(1);
        trial.Rules.Where(r => r.Value.Rechecks == 1).Select(r => r.Key)
            .ShouldBe(["pulse.method.15-seconds-fast", "pulse.method.uneven-short-count"], ignoreOrder: true);
    }

    private static RuleTrial Of(params TrialReading[] past) => RuleTrial.Of(TestRules.Defaults, past, _ => Notation.Resident(""));

    private static TrialReading Taken(string resident, int minutes, string reading) =>
        new(resident, new(Notation.Reading(reading), Notation.Now.AddMinutes(minutes)), new HashSet<string>());
}
