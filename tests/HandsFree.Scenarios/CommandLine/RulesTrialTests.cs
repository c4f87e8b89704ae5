using System.Text.Json;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

public sealed class RulesTrialTests
{
    private const string Past = """
        resident,taken,temperature,site,pulse,respirations,blood pressure,oxygen saturation,oxygen supply,symptoms
        r1,2026-03-01 08:00,98.6,mouth,72,16,118/76,97,air,
        r1,2026-03-01 16:00,100.4,mouth,104,22,184/76,92,air,
        r2,2026-03-01 08:10,97.4,mouth,104,18,100/76,96,air,
        r2,2026-03-01 16:10,97.4,mouth,112,18,128/76,96,air,short of breath
        """;

    private const string Changed = """{ "override": [ { "id": "pulse.fast", "threshold": 105, "unit": "/min" } ] }""";

    [Fact]
    public void A_changed_rule_file_is_held_against_the_rules_in_force()
    {
        using TemporaryHome home = InventedHome.New().With("past.csv", Past).With("changed.json", Changed);

        Golden.Match(CommandRun.Of(home, "rules", "trial", home.At("past.csv"), "--rules", home.At("changed.json")).Out);
    }

    [Fact]
    public void The_same_as_JSON()
    {
        using TemporaryHome home = InventedHome.New().With("past.csv", Past).With("changed.json", Changed);

        JsonElement trial = JsonDocument.Parse(CommandRun.Of(home, "rules", "trial", home.At("past.csv"), "--rules", home.At("changed.json"), "--json").Out).RootElement;

        trial.GetProperty("sets").GetInt32().ShouldBe(4);
        JsonElement fast = trial.GetProperty("rules").EnumerateArray().Single(r => r.GetProperty("rule").GetString() == "pulse.fast");
        fast.GetProperty("present").GetProperty("rechecks").GetDecimal().ShouldBe(50);
        fast.GetProperty("changed").GetProperty("rechecks").GetDecimal().ShouldBe(0);
    }

    [Fact]
    public void The_journal_of_a_home_is_a_past_too()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun folder = CommandRun.Of(home, "rules", "trial", home.Path);
        folder.Code.ShouldBe(0);
        folder.Lines[0].ShouldBe("1 sets, 1 readings; for 100 sets:");
        folder.Out.ShouldContain("pulse.now.high");
        CommandRun.Of(home, "rules", "trial", home.Folder.JournalFile).Out.ShouldBe(folder.Out);
    }

    [Fact]
    public void What_is_wrong_with_the_table_and_with_the_rules_is_listed_at_once()
    {
        using TemporaryHome home = InventedHome.New()
            .With("past.csv", "resident,taken,pulse\nr1,yesterday,fast\n")
            .With("changed.json", """{ "override": [ { "id": "pulse.now.high", "off": true } ] }""");

        CommandRun run = CommandRun.Of(home, "rules", "trial", home.At("past.csv"), "--rules", home.At("changed.json"));

        run.Code.ShouldBe(2);
        run.Out.ShouldBeEmpty();
        run.ErrorLines.Length.ShouldBe(3);
        run.Error.ShouldContain("changed.json(1): this switches off");
        run.Error.ShouldContain("past.csv(2,2): \"taken\" has \"yesterday\"; write day and time");
        run.Error.ShouldContain("past.csv(2,3): \"pulse\" has \"fast\"");
    }

    [Fact]
    public void A_past_that_is_not_there_is_named()
    {
        using TemporaryHome home = InventedHome.New();

        CommandRun.Of(home, "rules", "trial", "nowhere.csv").Error.ShouldContain("nowhere.csv: there is no such file");
        CommandRun.Of(home, "rules", "trial", home.Path).Error.ShouldContain("there is no journal in this folder");
    }
}
