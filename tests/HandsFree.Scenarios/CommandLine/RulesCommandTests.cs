using System.Text.Json;
using HandsFree.Core.Rules;
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
        decided.GetProperty("recheckFirst").GetString()!.ShouldContain("60 seconds");
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
