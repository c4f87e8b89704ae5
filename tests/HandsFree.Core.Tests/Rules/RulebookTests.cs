using HandsFree.Core.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

public class RulebookTests
{
    [Fact]
    public void Every_rule_has_a_source_a_mark_and_a_text()
    {
        var rules = TestRules.Defaults.Describe();

        rules.Count.ShouldBeGreaterThan(80);
        rules.ShouldAllBe(r => r.Source.Length >= 10 && r.Text.Length > 0 && Enum.IsDefined(r.Mark));
    }

    [Fact]
    public void What_is_marked_as_published_stands_on_no_mere_proposal_of_this_program() =>
        TestRules.Defaults.Describe().Where(r => r.Mark == RuleMark.Published)
            .ShouldAllBe(r => !r.Source.StartsWith("proposal") && !r.Source.StartsWith("this program") && !r.Source.StartsWith("arithmetic"));

    [Fact]
    public void What_is_a_proposal_or_arithmetic_is_marked_as_common_practice() =>
        TestRules.Defaults.Describe().Where(r => r.Source.StartsWith("proposal") || r.Source.StartsWith("arithmetic"))
            .ShouldAllBe(r => r.Mark == RuleMark.CommonPractice);

    [Fact]
    public void No_source_is_a_mere_key_of_a_list() =>
        TestRules.Defaults.Describe().ShouldAllBe(r => r.Source.Contains(' '));

    [Fact]
    public void Rules_are_listed_in_the_order_of_authority() =>
        TestRules.Defaults.Describe().Select(r => r.Authority).ShouldBeInOrder();

    [Fact]
    public void A_rule_is_listed_with_threshold_unit_conditions_and_recheck()
    {
        var rule = TestRules.Defaults.Describe().Single(r => r.Id == "temperature.fever.repeated");

        rule.Threshold.ShouldBe("temperature above 99 °F (37.2 °C)");
        rule.Conditions.ShouldBe("site mouth or unsaid; temperature above 99 °F (37.2 °C) 1 to 24 hours before, same site");
        rule.Outcome.ShouldBe(Outcome.ReportThisShift);
        rule.Group.ShouldBe("defaults for temperature");
    }

    [Fact]
    public void A_reason_names_value_side_threshold_and_unit()
    {
        var reason = TestRules.Defaults.Decide(Notation.Reading("pulse 132 seconds 60"), Notation.Context()).Reasons[0];

        reason.Text.ShouldBe("Very fast pulse: pulse 132 /min, above 130 /min");
        reason.Source.ShouldStartWith("Florida Atlantic University card for nursing homes, 2010");
        reason.Mark.ShouldBe(RuleMark.Published);
        reason.Outcome.ShouldBe(Outcome.ReportNow);
    }

    [Fact]
    public void A_reason_of_a_temperature_is_in_the_unit_that_was_spoken() =>
        TestRules.Defaults.Decide(Notation.Reading("temperature 38.4 C mouth"), Notation.Context()).Reasons[0].Text
            .ShouldBe("High fever: temperature 38.4 °C, above 38.3 °C");

    [Fact]
    public void A_reason_of_an_ordered_limit_names_who_ordered_it_and_when()
    {
        var reason = TestRules.Defaults.Decide(Notation.Reading("oxygen 87"), Notation.Context("ordered oxygen 88-92")).Reasons[0];

        reason.Text.ShouldBe("Saturation lower than ordered: oxygen saturation 87 %, below the ordered 88 %");
        reason.Source.ShouldStartWith("ordered by Dr Example on 2026-02-01; ");
    }

    [Fact]
    public void A_refused_arm_says_why()
    {
        var decision = TestRules.Defaults.Decide(Notation.Reading("bp 128/76 left"), Notation.Context("not left mastectomy"));

        decision.Reasons[0].Text.ShouldBe("This arm must not be used for a pressure (mastectomy)");
        decision.Recheck.ShouldNotBeNull().Instruction.ShouldBe("Do not use this arm. Measure on the other arm.");
    }

    [Fact]
    public void The_latest_of_several_orders_counts()
    {
        var context = Notation.Context("ordered oxygen 88-92");
        var resident = context.Resident with
        {
            OrderedLimits = [context.Resident.OrderedLimits[0] with { Least = 85, OrderedOn = new(2026, 3, 1) }, .. context.Resident.OrderedLimits],
        };

        TestRules.Defaults.Decide(Notation.Reading("oxygen 86"), context with { Resident = resident }).Outcome.ShouldBe(Outcome.Accept);
    }

    [Fact]
    public void A_temporary_limit_counts_until_it_ends()
    {
        var context = Notation.Context("ordered oxygen 86-92");
        var resident = context.Resident with
        {
            OrderedLimits = [context.Resident.OrderedLimits[0] with { Until = Notation.Now.AddMinutes(1) }],
        };
        var during = context with { Resident = resident };

        TestRules.Defaults.Decide(Notation.Reading("oxygen 87"), during).Outcome.ShouldBe(Outcome.Accept);
        TestRules.Defaults.Decide(Notation.Reading("oxygen 87"), during with { At = Notation.Now.AddMinutes(1) }).Outcome.ShouldBe(Outcome.ReportNow);
        TestRules.Defaults.Decide(Notation.Reading("oxygen 85"), during).Outcome.ShouldBe(Outcome.ReportNow);
    }

    [Fact]
    public void Equal_reasons_are_all_listed_the_weightiest_first()
    {
        var reasons = TestRules.Defaults.Decide(Notation.Reading("bp 220/120"), Notation.Context(symptoms: "headache")).Reasons;

        reasons.Select(r => r.Rule).ShouldBe(["pressure.now.diastolic-high", "pressure.now.high-with-symptoms", "pressure.now.systolic-high", "pressure.high"]);
        reasons.Select(r => r.Outcome).ShouldBe([Outcome.ReportNow, Outcome.ReportNow, Outcome.ReportNow, Outcome.ReportThisShift]);
    }

    [Fact]
    public void A_recheck_is_asked_for_at_most_twice_whatever_the_rule()
    {
        string[] readings = ["pulse 108 seconds 15", "pulse 16", "respirations 16 seconds 15", "bp 80/120", "oxygen 89", "temperature 94.0 F mouth", "weight 40 lb"];

        foreach (string reading in readings)
        {
            TestRules.Defaults.Decide(Notation.Reading(reading), Notation.Context(rechecks: 2)).Recheck.ShouldBeNull(reading);
            TestRules.Defaults.Decide(Notation.Reading(reading), Notation.Context()).Recheck.ShouldNotBeNull(reading);
        }
    }

    [Fact]
    public void The_hash_is_64_hex_digits_and_stays_with_each_decision()
    {
        TestRules.Defaults.Hash.ShouldMatch("^[0-9a-f]{64}$");
        TestRules.Defaults.Decide(Notation.Reading("pulse 72"), Notation.Context()).RulesHash.ShouldBe(TestRules.Defaults.Hash);
    }

    [Fact]
    public void White_space_comments_and_the_order_of_files_do_not_change_the_hash()
    {
        List<RuleFile> files = [.. Rulebook.Defaults().Select(f => new RuleFile("other-" + f.Name, "// note\n" + f.Text.Replace("  ", "\t") + "\n\n"))];
        files.Reverse();

        TestRules.Loaded(Rulebook.Load(files)).Hash.ShouldBe(TestRules.Defaults.Hash);
    }

    [Theory]
    [InlineData("""{ "override": [ { "id": "pulse.fast", "threshold": 99, "unit": "/min" } ] }""")]
    [InlineData("""{ "override": [ { "id": "pulse.fast", "off": true } ] }""")]
    [InlineData("""{ "override": [ { "id": "pulse.fast", "priority": 31 } ] }""")]
    [InlineData("""{ "override": [ { "id": "pulse.fast", "recheck": { "instruction": "measure-again" } } ] }""")]
    public void What_decides_changes_the_hash(string home) =>
        TestRules.WithHome(home).Hash.ShouldNotBe(TestRules.Defaults.Hash);

    [Fact]
    public void A_home_file_that_changes_nothing_leaves_the_hash() =>
        TestRules.WithHome("""{ "home": "Example House" }""").Hash.ShouldBe(TestRules.Defaults.Hash);
}
