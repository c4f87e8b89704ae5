using HandsFree.App.Commands;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Exports;

public sealed class ExportCsvTests
{
    [Theory]
    [InlineData("readings", 2)]
    [InlineData("sets", 1)]
    [InlineData("reports", 1)]
    public void A_table_is_written_and_the_journal_says_so(string what, int lines)
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        string file = home.At("out.csv");

        CommandRun run = CommandRun.Of(home, "export", "csv", "--what", what, "--out", file, "--because", "the records office asked");

        run.Code.ShouldBe(ExitCodes.Done, run.Error);
        run.Out.ShouldBe($"{file}: {lines} {what}{Environment.NewLine}");
        File.ReadAllLines(file).Length.ShouldBe(lines + 1);
        if (!OperatingSystem.IsWindows())
        {
            File.GetUnixFileMode(file).ShouldBe(UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }

        RecordTakenOut noted = Events(home).OfType<RecordTakenOut>().ShouldHaveSingleItem();
        (noted.What, noted.To, noted.Why).ShouldBe(($"{what} as CSV", file, "the records office asked"));
        Directory.GetFiles(home.Path, "out.csv?*").ShouldBe([file]);
    }

    [Fact]
    public void Nobody_s_name_is_in_a_table()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        foreach (string what in new[] { "readings", "sets", "reports" })
        {
            CommandRun.Of(home, "export", "csv", "--what", what, "--out", home.At(what), "--because", "a test").Code.ShouldBe(ExitCodes.Done);
            File.ReadAllText(home.At(what)).ShouldNotContain("Quill");
        }
    }

    [Fact]
    public void A_file_that_is_there_stays_and_nothing_is_taken_out()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().With("out.csv", "mine");

        CommandRun run = CommandRun.Of(home, "export", "csv", "--out", home.At("out.csv"), "--because", "a test");

        run.Code.ShouldBe(ExitCodes.BadInput);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("is there already; name a new file");
        File.ReadAllText(home.At("out.csv")).ShouldBe("mine");
        Events(home).OfType<RecordTakenOut>().ShouldBeEmpty();
    }

    [Theory]
    [InlineData("--because is empty", "--out", "x.csv", "--because", " ")]
    [InlineData("the roster names no units", "--out", "x.csv", "--because", "a test", "--unit", "Elm")]
    [InlineData("--from is \"noon\"", "--out", "x.csv", "--because", "a test", "--from", "noon")]
    [InlineData("is not there; make it, or name another", "--out", "no-such-folder/x.csv", "--because", "a test")]
    public void What_is_wrong_is_said_in_one_line(string words, params string[] args)
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        CommandRun run = CommandRun.Of(home, ["export", "csv", .. args.Select(a => a.EndsWith(".csv", StringComparison.Ordinal) ? home.At(a) : a)]);
        run.Code.ShouldBe(ExitCodes.BadInput);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain(words);
        Events(home).OfType<RecordTakenOut>().ShouldBeEmpty();
    }

    [Fact]
    public void A_full_disk_leaves_no_file()
    {
        Assert.SkipUnless(File.Exists("/dev/full"), "there is no /dev/full here");
        using TemporaryHome home = InventedHome.AfterTheRound();
        string file = home.At("out.csv");
        // The draft's name, taken by a link to the device that is always full.
        File.CreateSymbolicLink($"{file}.new-{Environment.ProcessId}", "/dev/full");

        CommandRun run = CommandRun.Of(home, "export", "csv", "--out", file, "--because", "a test");

        run.Code.ShouldBe(ExitCodes.BadInput);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("there is no such file now");
        Directory.GetFiles(home.Path, "out.csv*").ShouldBeEmpty();
        Events(home).OfType<RecordTakenOut>().Count().ShouldBe(1);
    }

    private static IReadOnlyList<JournalEvent> Events(TemporaryHome home)
    {
        using HomeJournal journal = HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet, null)).Journal!;
        return journal.All();
    }
}
