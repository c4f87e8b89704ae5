using System.Text;
using System.Text.Json;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

public sealed class JournalCommandTests
{
    [Fact]
    public void Every_event_is_a_line_for_a_person()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.Of(home, "journal", "list");

        run.Code.ShouldBe(0);
        Golden.Match(run.Out);
    }

    [Fact]
    public void Every_event_is_a_JSON_object_with_its_number()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.Of(home, "journal", "list", "--json");

        run.Code.ShouldBe(0);
        JsonElement[] events = [.. run.Lines.Select(line => JsonDocument.Parse(line).RootElement)];
        events.Select(e => e.GetProperty("sequence").GetInt32()).ShouldBe([1, 2, 3, 4, 5, 6]);
        JsonElement pulse = events[2].GetProperty("entry");
        pulse.GetProperty("type").GetString().ShouldBe("reading recorded");
        pulse.GetProperty("resident").GetString().ShouldBe("r1");
    }

    [Fact]
    public void A_whole_journal_is_verified()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun.Of(home, "journal", "verify").Out.ShouldContain("6 events, none missing, none changed, the end signed by this device; each readable (1 not taken, 1 reading recorded,");
        JsonElement json = JsonDocument.Parse(CommandRun.Of(home, "journal", "verify", "--json").Out).RootElement;
        json.GetProperty("events").GetInt32().ShouldBe(6);
        json.GetProperty("kinds").GetProperty("report opened").GetInt32().ShouldBe(1);
    }

    [Theory]
    [InlineData("no event at all", "event 7: not a journal event")]
    [InlineData("""{"schema": 9, "entry": null}""", "event 7: journal event of schema 9")]
    public void An_event_that_can_t_be_read_fails_the_verification_and_is_named(string body, string says)
    {
        using TemporaryHome home = InventedHome.AfterTheRound().WithJournalBytes(Encoding.UTF8.GetBytes(body));

        CommandRun run = CommandRun.Of(home, "journal", "verify");

        run.Code.ShouldBe(1);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain(says);
        CommandRun.Of(home, "handover", "--ask", "handover").Error.ShouldContain(says);
    }

    [Fact]
    public void An_id_that_stands_twice_fails_the_verification()
    {
        using TemporaryHome home = InventedHome.New().WithJournal(
            InventedHome.Pulse("s-1", "r1", 72, CommandRun.Now), InventedHome.Pulse("s-1", "r2", 80, CommandRun.Now));

        CommandRun run = CommandRun.Of(home, "journal", "verify");

        run.Code.ShouldBe(1);
        run.Error.ShouldContain("event 2: its id s-1 stands in an earlier event too");
    }

    [Theory]
    [InlineData("list")]
    [InlineData("verify")]
    public void Without_a_journal_none_is_made(string command)
    {
        using TemporaryHome home = InventedHome.New();

        CommandRun run = CommandRun.Of(home, "journal", command);

        run.Code.ShouldBe(2);
        run.Error.ShouldContain("there is no journal yet");
        File.Exists(home.Folder.JournalFile).ShouldBeFalse();
    }

    [Fact]
    public void A_file_that_is_no_journal_is_refused_and_left_as_it_is()
    {
        using TemporaryHome home = InventedHome.New().With("journal.db", "this is a shopping list and no database");

        CommandRun run = CommandRun.Of(home, "journal", "verify");

        run.Code.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("journal.db");
        File.ReadAllText(home.Folder.JournalFile).ShouldBe("this is a shopping list and no database");
    }
}
