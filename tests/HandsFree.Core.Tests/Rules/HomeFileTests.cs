using HandsFree.Core.Rules;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

public class HomeFileTests
{
    private const string Approval = "\"approved by\": \"Dr Example\", \"approved on\": \"2026-03-01\"";

    [Fact]
    public void A_stricter_threshold_needs_no_approval_and_is_used()
    {
        var rules = TestRules.WithHome("""{ "override": [ { "id": "pulse.now.high", "threshold": 120, "unit": "/min" } ] }""");

        Decide(rules, "pulse 121").Outcome.ShouldBe(Outcome.ReportNow);
        Decide(TestRules.Defaults, "pulse 121").Outcome.ShouldBe(Outcome.ReportThisShift);
    }

    [Fact]
    public void A_report_now_that_is_switched_off_with_approval_is_silent_and_says_who_approved()
    {
        var rules = TestRules.WithHome($$"""{ "override": [ { "id": "pulse.now.high", "off": true, {{Approval}} } ] }""");

        Decide(rules, "pulse 135 seconds 60").Outcome.ShouldBe(Outcome.ReportThisShift);
        var listing = rules.Describe().Single(r => r.Id == "pulse.now.high");
        listing.InForce.ShouldBeFalse();
        listing.Changed.ShouldNotBeNull().ShouldContain("approved by Dr Example on 2026-03-01");
    }

    [Fact]
    public void The_reason_of_a_changed_rule_names_the_home_the_approver_and_the_default_source()
    {
        var rules = TestRules.WithHome($$"""{ "override": [ { "id": "oxygen.now.low", "threshold": 88, "unit": "%", {{Approval}} } ] }""");

        Decide(rules, "oxygen 88").Outcome.ShouldBe(Outcome.Accept);
        var reason = Decide(rules, "oxygen 87").Reasons.Single(r => r.Rule == "oxygen.now.low");
        reason.Source.ShouldStartWith("the home's file (approved by Dr Example on 2026-03-01), in place of: Infectious Diseases Society of America");
        reason.Text.ShouldBe("Low saturation: oxygen saturation 87 %, below 88 %");
    }

    [Fact]
    public void A_report_this_shift_is_changed_or_switched_off_without_approval()
    {
        var rules = TestRules.WithHome("""
            { "override": [
                { "id": "pulse.fast", "threshold": 105, "unit": "/min" },
                { "id": "respirations.method.30-seconds", "off": true } ] }
            """);

        Decide(rules, "pulse 105").Reasons.ShouldBeEmpty();
        Decide(rules, "pulse 106").Outcome.ShouldBe(Outcome.ReportThisShift);
        Decide(rules, "respirations 18 seconds 30").Recheck.ShouldBeNull();
    }

    [Fact]
    public void A_rule_that_is_off_by_default_can_be_switched_on()
    {
        List<RuleFile> off = [.. Rulebook.Defaults().Select(f => f with { Text = f.Text.Replace("\"id\": \"pulse.fast\",", "\"id\": \"pulse.fast\", \"off\": true,") })];
        var home = new RuleFile("home.json", """{ "override": [ { "id": "pulse.fast", "off": false } ] }""");

        Decide(TestRules.Loaded(Rulebook.Load(off)), "pulse 105").Outcome.ShouldBe(Outcome.Accept);
        Decide(TestRules.Loaded(Rulebook.Load(off, home)), "pulse 105").Outcome.ShouldBe(Outcome.ReportThisShift);
    }

    [Fact]
    public void The_home_files_example_in_the_readme_of_the_rules_loads()
    {
        string readme = File.ReadAllText(Path.Combine(Shared.Repository, "src", "HandsFree.Core", "Rules", "Data", "README.md"));
        string example = readme.Split("```json")[^1].Split("```")[0];

        var rules = TestRules.WithHome(example);

        rules.Describe().Count(r => r.Changed is not null).ShouldBe(4);
    }

    [Fact]
    public void A_home_limit_takes_the_place_of_the_default_that_decides_the_same_on_that_side()
    {
        var rules = TestRules.WithHome("""
            { "home": "Example House", "rules": [
                { "id": "home.pulse.fast", "text": "Fast in our home", "of": "pulse", "above": 108, "unit": "/min",
                  "action": "report this shift", "source": "medical director, 2026", "mark": "common practice, no source" } ] }
            """);

        Decide(rules, "pulse 108").Reasons.ShouldBeEmpty();
        Decide(rules, "pulse 109").Reasons.ShouldHaveSingleItem().Rule.ShouldBe("home.pulse.fast");
        rules.Describe().Single(r => r.Id == "pulse.fast").Changed.ShouldBe("replaced by the home's \"home.pulse.fast\"");
    }

    [Fact]
    public void A_home_limit_that_reports_this_shift_does_not_silence_a_default_that_reports_now()
    {
        var rules = TestRules.WithHome("""
            { "rules": [
                { "id": "home.pulse.fast", "text": "Fast in our home", "of": "pulse", "above": 140, "unit": "/min",
                  "action": "report this shift", "source": "medical director, 2026", "mark": "common practice, no source" } ] }
            """);

        Decide(rules, "pulse 131").Outcome.ShouldBe(Outcome.ReportNow);
        Decide(rules, "pulse 141").Reasons.Select(r => r.Rule).ShouldBe(["pulse.now.high", "pulse.fast-ask-breath", "home.pulse.fast"]);
    }

    [Fact]
    public void An_ordered_limit_replaces_the_home_limit_too()
    {
        var rules = TestRules.WithHome("""
            { "rules": [
                { "id": "home.pulse.fast", "text": "Fast in our home", "of": "pulse", "above": 90, "unit": "/min",
                  "action": "report this shift", "source": "medical director, 2026", "mark": "common practice, no source" } ] }
            """);

        var decision = rules.Decide(Notation.Reading("pulse 95"), Notation.Context("ordered pulse -110"));

        decision.Outcome.ShouldBe(Outcome.Accept);
        decision.Reasons.ShouldHaveSingleItem().Text.ShouldBe("pulse 95 /min is within the ordered limit of 110 /min, which replaces: Fast in our home (pulse above 90 /min)");
    }

    private static Decision Decide(Rulebook rules, string reading) => rules.Decide(Notation.Reading(reading), Notation.Context());
}
