using HandsFree.Scenarios.Reports;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

/// <summary>A round by keys alone, on a machine without any sound.</summary>
public sealed class RoundCommandTests
{
    [Fact]
    public void A_round_by_keys_saves_what_is_confirmed_and_shows_what_nobody_can_hear()
    {
        using TemporaryHome home = InventedHome.New().WithPeople();

        CommandRun run = Round(home, "room 12 bed b\nyes\n1130\npulse 72\nyes\ngoodbye\n", "--plain");

        run.Code.ShouldBe(0, run.Error);
        run.Error.ShouldContain("Nothing can be said aloud, it is shown: sound is switched off by choice.");
        run.Lines.ShouldContain(line => line.EndsWith("Bo Larkin? Look first.", StringComparison.Ordinal));
        run.Lines.ShouldContain(line => line.Contains("[k] KEYS ONLY: type what you would say  Room 12 bed B  readings", StringComparison.Ordinal));
        using HomeJournal journal = HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet with { Variable = home.Unlocking("aide-7") }, null)).Journal!;
        journal.All().OfType<ReadingRecorded>().ShouldHaveSingleItem().Confirmed.Reading.Value.ShouldBe(HeartRate.FromPerMinute(72));
        journal.All().OfType<RoundEnded>().ShouldHaveSingleItem().Person.ShouldBe("aide-7");
    }

    [Fact]
    public void Where_the_keys_end_the_round_ends_and_goes_on_at_the_next_start()
    {
        using TemporaryHome home = InventedHome.New().WithPeople();

        Round(home, "room 12 bed b\nyes\n1130\n", "--plain").Error.ShouldContain("the round goes on at the next start");
        CommandRun second = Round(home, "goodbye\n", "--plain");

        second.Lines.ShouldContain(line => line.Contains("The round goes on.", StringComparison.Ordinal));
    }

    [Fact]
    public void With_json_each_thing_that_happens_is_one_object()
    {
        using TemporaryHome home = InventedHome.New().WithPeople();

        CommandRun run = Round(home, "goodbye\n", "--json");

        run.Lines.ShouldAllBe(line => System.Text.Json.JsonDocument.Parse(line).RootElement.GetProperty("at").GetString() != null);
        run.Lines.ShouldContain(line => line.Contains("\"said\":\"Goodbye.\"", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("--press-to-talk and --open-microphone exclude each other", "--press-to-talk", "--open-microphone")]
    [InlineData("has no residents")]
    public void What_can_not_be_is_refused_with_what_to_do(string reason, params string[] args)
    {
        using TemporaryHome home = new();
        CommandRun run = CommandRun.Of(home, ["round", "--keys", "--sound", "none", .. args]);
        run.Code.ShouldBe(2);
        run.Error.ShouldContain(reason);
    }

    [Fact]
    public void Where_nobody_is_set_up_no_round_begins()
    {
        using TemporaryHome home = InventedHome.New();

        CommandRun run = Round(home, "goodbye\n", "--plain");

        run.Code.ShouldBe(2);
        run.Error.ShouldContain("set a supervisor up first");
    }

    [Fact]
    public void A_broken_sound_json_is_refused_with_its_line()
    {
        using TemporaryHome home = InventedHome.New();
        Directory.CreateDirectory(home.States);
        File.WriteAllText(Path.Combine(home.States, "sound.json"), """{ "microfone": "headset" }""");

        CommandRun run = CommandRun.Of(home, "round", "--keys");

        run.Code.ShouldBe(2);
        run.Error.ShouldContain("sound.json(1)");
    }

    private static CommandRun Round(TemporaryHome home, string typed, params string[] args) => CommandRun.With(
        home,
        s => s with { In = new StringReader(typed), Time = TimeProvider.System, Variable = name => home.Unlocking("aide-7")(name) ?? s.Variable(name) },
        ["round", "--keys", "--sound", "none", .. args]);
}
