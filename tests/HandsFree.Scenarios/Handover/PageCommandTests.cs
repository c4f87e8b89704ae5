using HandsFree.App.Files;
using HandsFree.App.Pages;
using HandsFree.Core.Journal;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Handover;

/// <summary>"handover --page" and "trend": the file, what is said about it, and every way in which it can't be.</summary>
public sealed class PageCommandTests
{
    [Theory]
    [InlineData("page.html", "<!DOCTYPE html>")]
    [InlineData("page.PDF", "%PDF-1.")]
    public void The_page_is_a_file_for_this_user_alone_and_the_answer_warns_and_needs_no_printer(string name, string begins)
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.Of(home, "handover", "--page", home.At(name));

        run.Code.ShouldBe(0, run.Error);
        run.Lines[0].ShouldBe($"{home.At(name)}: handover of 3 residents, Letter");
        run.Lines[1].ShouldBe(PageDesk.Warning);
        File.ReadAllText(home.At(name)).ShouldStartWith(begins);
        if (!OperatingSystem.IsWindows())
        {
            File.GetUnixFileMode(home.At(name)).ShouldBe(UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }

        Directory.GetFiles(home.Path, "*.new-*").ShouldBeEmpty();
    }

    [Fact]
    public void What_the_round_recorded_is_on_it()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        CommandRun.Of(home, "handover", "--page", home.At("page.html"), "--paper", "a4").Out.ShouldContain(", A4");

        string page = File.ReadAllText(home.At("page.html"));
        page.ShouldContain("Pulse 136 /min at 09:32");
        page.ShouldContain("Ada Quill");
        page.ShouldContain("size: A4");
        page.ShouldContain("All that was open: refused");
        page.ShouldContain("since Tue 3 Mar 2026, 07:00");
        CommandRun.Of(home, "handover", "--page", home.At("nameless.html"), "--without-names").Code.ShouldBe(0);
        File.ReadAllText(home.At("nameless.html")).ShouldNotContain("Quill");
    }

    [Fact]
    public void A_file_that_is_there_stays_unless_it_may_be_replaced()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().With("page.html", "mine");

        CommandRun refused = CommandRun.Of(home, "handover", "--page", home.At("page.html"));

        refused.Code.ShouldBe(2);
        refused.ErrorLines.ShouldHaveSingleItem().ShouldEndWith("is there already; name another file, or replace it with --overwrite");
        File.ReadAllText(home.At("page.html")).ShouldBe("mine");
        CommandRun.Of(home, "handover", "--page", home.At("page.html"), "--overwrite").Code.ShouldBe(0);
        File.ReadAllText(home.At("page.html")).ShouldStartWith("<!DOCTYPE html>");
    }

    [Theory]
    [InlineData("name a file that ends in .html or .pdf", "handover", "--page", "page.doc")]
    [InlineData("it can be A4 or Letter", "handover", "--page", "page.pdf", "--paper", "A3")]
    [InlineData("and the home has no such unit; its residents are of no unit; leave --unit out", "handover", "--page", "page.pdf", "--unit", "East")]
    [InlineData("name its file with --page", "handover", "--unit", "East")]
    [InlineData("run the command once for each", "handover", "--page", "page.pdf", "--ask", "handover")]
    [InlineData("write a time such as 07:00", "handover", "--page", "page.pdf", "--shift-began", "noon")]
    [InlineData("is not there; make it, or name another", "handover", "--page", "nowhere/page.pdf")]
    [InlineData("is a folder; name a file in it", "handover", "--page", "folder.pdf")]
    [InlineData("trend writes a page", "trend", "r1")]
    [InlineData("--days is 0; it can be 1 to 366", "trend", "r1", "--page", "page.pdf", "--days", "0")]
    [InlineData("there is no resident with the id \"r9\"", "trend", "r9", "--page", "page.pdf")]
    public void What_can_t_be_is_said_with_what_to_do_and_no_file_is_made(string said, params string[] args)
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        Directory.CreateDirectory(home.At("folder.pdf"));
        string[] before = Directory.GetFiles(home.Path, "*.pdf*");

        CommandRun run = CommandRun.Of(home, [.. args.Select(a => a.Contains(".pdf", StringComparison.Ordinal) || a.EndsWith(".doc", StringComparison.Ordinal) ? home.At(a) : a)]);

        run.Code.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain(said);
        Directory.GetFiles(home.Path, "*.pdf*").ShouldBe(before);
    }

    [Fact]
    public void An_unknown_unit_gets_those_that_there_are()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().With("roster.json", InventedHome.Roster.Replace("\"room\": 3,", "\"room\": 3, \"unit\": \"West\",", StringComparison.Ordinal));

        CommandRun.Of(home, "handover", "--page", home.At("page.html"), "--unit", "East").ErrorLines.ShouldHaveSingleItem().ShouldEndWith("it has West");
        CommandRun.Of(home, "handover", "--page", home.At("page.html"), "--unit", "west").Out.ShouldContain("handover of 1 resident,");
        File.ReadAllText(home.At("page.html")).ShouldNotContain("Ada Quill");
    }

    [Fact]
    public void A_folder_that_can_t_be_written_gets_a_line_and_no_draft_stays()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        Directory.CreateDirectory(home.At("page.html"));

        AtomicFile.Write(home.At("page.html"), [1, 2, 3])!.ShouldContain("can't be written");
        Directory.GetFiles(home.Path, "page.html*").ShouldBeEmpty();
    }

    [Fact]
    public void Without_a_record_everybody_is_not_visited_and_the_page_says_that_there_is_none()
    {
        using TemporaryHome home = InventedHome.New();

        CommandRun.Of(home, "handover", "--page", home.At("page.html")).Code.ShouldBe(0);

        string page = File.ReadAllText(home.At("page.html"));
        page.ShouldContain("Nothing was ever recorded on this device.");
        page.ShouldContain("3 not visited");
        File.Exists(home.Folder.JournalFile).ShouldBeFalse();
    }

    [Fact]
    public void A_trend_shows_the_month_and_a_resident_who_left_the_roster_still_has_one()
    {
        using TemporaryHome home = InventedHome.New().WithJournal(
            InventedHome.Pulse("a-1", "r1", 61, CommandRun.Now.AddDays(-40)),
            InventedHome.Pulse("a-2", "r1", 77, CommandRun.Now.AddDays(-20)),
            InventedHome.Pulse("a-3", "r1", 78, CommandRun.Now.AddDays(-1)),
            InventedHome.Pulse("a-4", "gone", 83, CommandRun.Now.AddDays(-2)));

        CommandRun.Of(home, "trend", "r1", "--page", home.At("one.html")).Lines[0].ShouldBe($"{home.At("one.html")}: 31 days of resident r1, 2 readings, Letter");
        CommandRun.Of(home, "trend", "r1", "--page", home.At("more.html"), "--days", "60").Lines[0].ShouldContain("60 days of resident r1, 3 readings");
        CommandRun.Of(home, "trend", "gone", "--page", home.At("gone.html")).Code.ShouldBe(0);
        File.ReadAllText(home.At("gone.html")).ShouldContain("Not on the roster");
        CommandRun.Of(home, "trend", "r3", "--page", home.At("none.html")).Lines[0].ShouldContain("0 readings");
        File.ReadAllText(home.At("none.html")).ShouldContain("No reading in this time.");
    }

    [Fact]
    public void A_look_is_an_event_and_its_person_stands_on_the_page()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        home.With("pin", "heron lamp 24").With("unlock", "nurse-1 heron lamp 24");
        CommandRun With(string variable, string file, params string[] args) =>
            CommandRun.With(home, s => s with { Variable = name => name == variable ? home.At(file) : s.Variable(name) }, args);
        With("HANDSFREE_NEW_PIN_FILE", "pin", "people", "add", "nurse-1", "--role", "supervisor").Code.ShouldBe(0);

        CommandRun.Of(home, "handover", "--page", home.At("page.html")).ErrorLines.ShouldHaveSingleItem().ShouldContain("locked");
        File.Exists(home.At("page.html")).ShouldBeFalse();
        With("HANDSFREE_PIN_FILE", "unlock", "handover", "--page", home.At("page.html")).Code.ShouldBe(0);
        With("HANDSFREE_PIN_FILE", "unlock", "trend", "r1", "--page", home.At("trend.pdf")).Code.ShouldBe(0);

        File.ReadAllText(home.At("page.html")).ShouldContain("by nurse-1");
        string list = With("HANDSFREE_PIN_FILE", "unlock", "journal", "list").Out;
        list.ShouldContain("viewed by nurse-1: handover page");
        list.ShouldContain("viewed by nurse-1: trend of resident r1");
    }

    [Fact]
    public void Events_since_a_moment_are_found_without_those_before()
    {
        using TemporaryHome home = InventedHome.New().WithJournal(
            [.. Enumerable.Range(0, 100).Select(day => InventedHome.Pulse($"a-{day}", "r1", 70, CommandRun.Now.AddDays(day - 100)))]);
        using App.Homes.HomeJournal journal = App.Homes.HomeJournal.Open(home.Folder, new App.Unlocking.Unlocker(CommandRun.Quiet, null)).Journal!;

        foreach (int days in new[] { 1, 30, 99, 100, 500 })
        {
            DateTimeOffset from = CommandRun.Now.AddDays(-days);
            journal.Since(from).Select(e => e.Id).ShouldBe(journal.All().Where(e => e.At >= from).Select(e => e.Id));
        }

        journal.Since(CommandRun.Now.AddDays(1)).ShouldBeEmpty();
    }

    [Fact]
    public void An_empty_journal_has_no_events_since_any_moment()
    {
        using TemporaryHome home = InventedHome.New();
        using App.Homes.HomeJournal journal = App.Homes.HomeJournal.Open(home.Folder, new App.Unlocking.Unlocker(CommandRun.Quiet, null)).Journal!;

        journal.Since(CommandRun.Now).OfType<JournalEvent>().ShouldBeEmpty();
    }
}
