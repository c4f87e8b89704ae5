using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Scenarios.Reports;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

/// <summary>An event that this program can't read, of a newer one on the same home: it is named and passed over, and the home goes on.</summary>
public sealed class PassedOverTests
{
    private const string Named = "event 7: journal event of schema 2, this program reads up to 1: update the program; it is passed over";

    [Theory]
    [InlineData("handover", "--ask", "handover")]
    [InlineData("report", "list")]
    [InlineData("journal", "replay")]
    [InlineData("rules", "try", "pulse 72", "--resident", "r1")]
    [InlineData("handover", "--page", "page.html")]
    public void Commands_name_it_and_go_on(params string[] command)
    {
        using TemporaryHome home = Home();

        CommandRun run = CommandRun.Of(home, [.. command.Select(word => word == "page.html" ? home.At(word) : word)]);

        run.ErrorLines.Count(line => line.EndsWith(Named, StringComparison.Ordinal)).ShouldBe(1, run.Error);
        run.Code.ShouldBe(0, run.Error);
    }

    [Fact]
    public void The_list_shows_where_it_is_and_verifying_says_it()
    {
        using TemporaryHome home = Home();

        CommandRun.Of(home, "journal", "list").Lines.Count(line => line == Named).ShouldBe(1);
        CommandRun.Of(home, "journal", "verify").Error.ShouldContain("event 7");
    }

    [Fact]
    public void What_was_written_after_it_is_there_and_no_view_is_kept_without_it()
    {
        using TemporaryHome home = Home().WithJournal(
            [.. Enumerable.Range(0, 400).Select(i => new RecordViewed($"v-{i}", "nurse-1", CommandRun.Now, "handover"))]);

        using HomeJournal journal = HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet, null)).Journal!;

        journal.All().Count.ShouldBe(6 + 400);
        journal.Present().OfType<RecordViewed>().Count().ShouldBe(400);
        journal.From(6).First().Sequence.ShouldBe(6);
        journal.From(7).First().Sequence.ShouldBe(8);
        journal.Since(CommandRun.Now.AddDays(-3)).Count().ShouldBe(6 + 400);
        journal.PassedOver.Lines.ShouldBe([Named]);
        File.Exists(home.Folder.ViewFile).ShouldBeFalse();
    }

    [Fact]
    public void A_round_begins_goes_on_and_says_it()
    {
        using TemporaryHome home = Home().WithPeople();

        CommandRun run = CommandRun.With(
            home, s => s with { Variable = name => home.Unlocking("aide-7")(name) ?? s.Variable(name), In = new StringReader("room 12 bed b\nyes\n1130\npulse 72\nyes\ngoodbye\n") }, "round", "--keys", "--sound", "none", "--plain");

        run.Code.ShouldBe(0, run.Error);
        run.Out.ShouldContain("The record has an entry that I cannot read. Tell your supervisor.");
        run.Out.ShouldContain("Goodbye.");
        using HomeJournal journal = HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet with { Variable = home.Unlocking("aide-7") }, null)).Journal!;
        journal.All().OfType<ReadingRecorded>().Last().Confirmed.Reading.Value.ShouldBe(Core.Quantities.HeartRate.FromPerMinute(72));
    }

    [Fact]
    public void No_two_sessions_and_no_two_commands_share_an_id_in_one_moment_or_in_the_hour_that_autumn_repeats()
    {
        DateTimeOffset before = new(2026, 11, 1, 1, 30, 0, TimeSpan.FromHours(-5));
        string[] first = [.. Enumerable.Range(0, 1000).Select(_ => EventIds.Begin("round", before))];
        DateTimeOffset after = new(2026, 11, 1, 1, 30, 0, TimeSpan.FromHours(-6));
        string[] again = [.. Enumerable.Range(0, 1000).Select(_ => EventIds.Begin("round", after))];

        first.Concat(again).Distinct().Count().ShouldBe(2000);
        string.CompareOrdinal(first.Max(), again.Min()).ShouldBeLessThan(0, "the moment is in UTC, which repeats no hour");
    }

    [Fact]
    public void Two_rounds_begun_in_one_second_keep_both_their_reports()
    {
        using TemporaryHome home = InventedHome.New().WithPeople();
        foreach (string resident in (string[])["room 12 bed a\nyes\n0309\n", "room 12 bed b\nyes\n1130\n"])
        {
            CommandRun.With(
                home, s => s with { Variable = name => home.Unlocking("aide-7")(name) ?? s.Variable(name), In = new StringReader(resident + "respirations 40\n40\ngoodbye\n") }, "round", "--keys", "--sound", "none", "--plain").Code.ShouldBe(0);
        }

        using HomeJournal journal = HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet with { Variable = home.Unlocking("aide-7") }, null)).Journal!;
        journal.All().Select(e => e.Id).Distinct().Count().ShouldBe(journal.All().Count);
        Core.Reports.ReportBook.Of(journal.All()).All.Select(r => r.Resident).ShouldBe(["r1", "r2"]);
    }

    private static TemporaryHome Home() =>
        InventedHome.AfterTheRound().WithJournalBytes("""{"schema": 2, "entry": {"type": "of tomorrow"}}"""u8.ToArray());
}
