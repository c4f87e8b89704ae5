using System.Text.Json;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

public sealed class RulesCommandTests
{
    [Fact]
    public void Every_rule_is_listed_with_its_source()
    {
        using TemporaryHome home = new();

        CommandRun text = CommandRun.Of(home, "rules", "list");
        CommandRun json = CommandRun.Of(home, "rules", "list", "--json");

        string[] ids = [.. Rulebook.Load().Rulebook!.Describe().Select(rule => rule.Id)];
        text.Lines.Select(line => line.Split(':')[0]).ShouldBe(ids);
        JsonElement[] rules = [.. json.Lines.Select(line => JsonDocument.Parse(line).RootElement)];
        rules.Select(rule => rule.GetProperty("rule").GetString()).ShouldBe(ids);
        rules.ShouldAllBe(rule => rule.GetProperty("source").GetString()!.Length > 0);
    }

    [Fact]
    public void A_rule_is_shown_with_what_it_decides_and_where_it_comes_from()
    {
        using TemporaryHome home = new();

        CommandRun run = CommandRun.Of(home, "rules", "show", "pulse.now.high");

        run.Code.ShouldBe(0);
        run.Lines[0].ShouldBe("rule:           pulse.now.high");
        run.Out.ShouldContain("when:           pulse above 130 /min");
        run.Out.ShouldContain("decides:        report now");
        CommandRun.Of(home, "rules", "show", "pulse.of.nobody").Error.ShouldContain("there is no rule \"pulse.of.nobody\"");
    }

    // Pulse above 130: report now after a full count (clinical-rules, "pulse").
    [Theory]
    [InlineData("pulse 132")]
    [InlineData("pulse one thirty two")]
    [InlineData("Pulse one three two.")]
    public void A_reading_is_tried_in_words_and_in_figures(string reading)
    {
        using TemporaryHome home = new();

        JsonElement decided = JsonDocument.Parse(CommandRun.Of(home, "rules", "try", reading, "--json").Out).RootElement;

        decided.GetProperty("reading").GetString().ShouldBe("pulse, one three two");
        decided.GetProperty("decision").GetString().ShouldBe("report now");
        decided.GetProperty("recheckFirst").GetBoolean().ShouldBeTrue();
        decided.GetProperty("recheck").GetProperty("instruction").GetString()!.ShouldContain("60 seconds");
        decided.GetProperty("reasons")[0].GetProperty("rule").GetString().ShouldBe("pulse.now.high");
    }

    [Theory]
    [InlineData("temperature 98.6", "temperature, nine eight point six Fahrenheit: accept")]
    [InlineData("blood pressure 118/76", "blood pressure, one one eight over seven six: accept")]
    [InlineData("oxygen 97%", "oxygen, nine seven percent: accept")]
    public void Figures_with_a_point_a_stroke_and_a_percent_sign_are_understood(string reading, string says)
    {
        using TemporaryHome home = new();

        CommandRun.Of(home, "rules", "try", reading).Lines[0].ShouldStartWith(says);
    }

    [Fact]
    public void A_nurse_s_plan_that_stands_decides_for_its_resident_as_in_the_round()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().WithJournal(
            new PlanMade("p-1", "nurse-1", CommandRun.Now.AddMinutes(-5), "r1", "s-4", LimitedValue.Pulse, null, 140, CommandRun.Now.AddHours(8), "rest in bed"));

        CommandRun.Of(home, "rules", "try", "pulse 136", "--resident", "r1").Lines[0].ShouldContain("accept");
        CommandRun.Of(home, "rules", "try", "pulse 136", "--resident", "r2").Lines[0].ShouldContain("report");
    }

    [Fact]
    public void An_ordered_limit_of_the_roster_decides_for_its_resident_alone()
    {
        using TemporaryHome home = InventedHome.New().With("roster.json", """
            { "residents": [{ "id": "r9", "name": "Di Fern", "room": 4, "born": "1935-05-05",
              "orderedLimits": [{ "value": "pulse", "greatest": 90, "orderedBy": "Dr Invented", "orderedOn": "2026-01-02" }] }] }
            """);

        CommandRun.Of(home, "rules", "try", "pulse 94").Lines[0].ShouldBe("pulse, nine four: accept");
        CommandRun.Of(home, "rules", "try", "pulse 94", "--resident", "r9").Lines[0].ShouldContain("report");
        CommandRun nobody = CommandRun.Of(home, "rules", "try", "pulse 94", "--resident", "r8");
        nobody.Code.ShouldBe(2);
        nobody.Error.ShouldContain("no resident with the id \"r8\"");
    }

    // E-09: three pointers of a chest infection in one set; each alone would be a report this shift at most.
    [Fact]
    public void Several_values_make_a_set()
    {
        using TemporaryHome home = new();

        JsonElement decided = JsonDocument.Parse(CommandRun.Of(home, "rules", "try", "respirations 26, oxygen 92 on room air, temperature 100.4, pulse 96", "--json").Out).RootElement;

        decided.GetProperty("decision").GetString().ShouldBe("report now");
        decided.GetProperty("recheckFirst").GetBoolean().ShouldBeFalse();
        decided.GetProperty("reasons")[0].GetProperty("rule").GetString().ShouldBe("set.three-pointers");
        decided.GetProperty("reasons").EnumerateArray().ShouldAllBe(r => r.GetProperty("source").GetString()!.Length > 0 && r.GetProperty("text").GetString()!.Length > 0);
        decided.GetProperty("readings").EnumerateArray().Select(r => r.GetProperty("decision").GetString()).ShouldBe(["report now", "report now", "report now", "accept"]);
    }

    [Theory]
    [InlineData("pulse 72", "accept", false)]
    [InlineData("oxygen 93 on room air", "recheck", true)] // I-15 with the safety page
    [InlineData("pulse 16", "ask again", true)]
    [InlineData("pulse 112", "report this shift", true)] // B-29
    [InlineData("pulse 112, short of breath", "report now", false)] // B-29
    [InlineData("temperature 101.2", "report now", false)] // I-12
    [InlineData("pulse 118, respirations 24, temperature 101.2", "report now", false)]
    [InlineData("blood pressure 140/80, lying, blood pressure 120/74, standing", "report this shift", false)] // B-14
    [InlineData("pulse 132, sixty seconds", "report now", false)] // E-04, counted
    public void A_decision_is_one_of_five_words_and_says_whether_a_recheck_comes_first(string readings, string decision, bool recheckFirst)
    {
        using TemporaryHome home = new();

        JsonElement decided = JsonDocument.Parse(CommandRun.Of(home, "rules", "try", readings, "--json").Out).RootElement;

        decided.GetProperty("decision").GetString().ShouldBe(decision);
        decided.GetProperty("recheckFirst").GetBoolean().ShouldBe(recheckFirst);
    }

    [Fact]
    public void Each_step_that_decided_is_explained()
    {
        using TemporaryHome home = InventedHome.New().With("roster.json", """
            { "residents": [{ "id": "r9", "name": "Di Fern", "room": 4, "born": "1935-05-05",
              "orderedLimits": [{ "value": "oxygen saturation", "least": 88, "greatest": 92, "orderedBy": "Dr Invented", "orderedOn": "2026-01-02" }] }] }
            """).With("home.json", """{ "timeZone": "America/Chicago", "news2": true }""");

        Golden.Match(string.Join('\n', new[] { "oxygen 89", "oxygen 87 on room air, pulse 16, irregular", "pulse 90, respirations 20, temperature 98.4, blood pressure 122/80, oxygen 90" }
            .SelectMany(readings => CommandRun.Of(home, "rules", "try", readings, "--resident", "r9", "--consciousness", "alert").Lines.Prepend("> " + readings).Append(""))));
    }

    [Fact]
    public void A_part_that_is_not_understood_is_named()
    {
        using TemporaryHome home = new();

        CommandRun run = CommandRun.Of(home, "rules", "try", "pulse 72, tired");

        run.Code.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("\"tired\": that is no reading");
    }

    [Theory]
    [InlineData("about seventy")]
    [InlineData("pulse")]
    [InlineData("what a lovely day")]
    public void What_is_no_reading_is_refused(string text)
    {
        using TemporaryHome home = new();

        CommandRun run = CommandRun.Of(home, "rules", "try", text);

        run.Code.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("no reading");
    }
}
