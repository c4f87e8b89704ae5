using System.Text.RegularExpressions;
using HandsFree.Scenarios.CommandLine;
using HandsFree.Scenarios.Reports;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>Threats 3 and 5 as a person meets them: a record that is gone, put back, or tried out elsewhere.</summary>
public sealed partial class LostRecordTests : IDisposable
{
    private readonly TemporaryHome home = InventedHome.AfterTheRound().WithPeople();

    public void Dispose() => home.Dispose();

    [Theory]
    [InlineData("report", "list")]
    [InlineData("residents", "list")]
    [InlineData("journal", "list")]
    [InlineData("journal", "verify")]
    [InlineData("round", "--keys", "--sound", "none")]
    public void Where_the_file_is_gone_nothing_is_said_to_be_empty(params string[] command)
    {
        File.Delete(home.Folder.JournalFile);

        CommandRun run = home.As("nurse-1", command);

        run.Code.ShouldBe(2);
        run.Error.ShouldContain("this device had a journal here, and the file is gone");
        run.Out.ShouldNotContain("No open reports");
    }

    [Fact]
    public void Where_the_file_and_what_the_device_remembers_are_gone_what_lies_beside_it_tells_that_there_was_one()
    {
        home.As("nurse-1", "residents", "list").Code.ShouldBe(0);
        File.Delete(home.Folder.JournalFile);
        Directory.Delete(home.States, recursive: true);

        CommandRun run = home.As("nurse-1", "report", "list");

        run.Code.ShouldBe(2);
        run.Error.ShouldContain("a journal was here and is gone");
        File.Exists(home.Folder.JournalFile).ShouldBeFalse();
    }

    [Fact]
    public void The_log_is_this_user_s_alone()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("files have no mode there");
            return;
        }

        home.As("nurse-1", "residents", "list").Code.ShouldBe(0);
        File.GetUnixFileMode(home.Folder.LogFile).ShouldBe(UnixFileMode.UserRead | UnixFileMode.UserWrite);
    }

    [Fact]
    public void A_restore_drill_into_another_folder_locks_nobody_out_of_the_live_home()
    {
        home.As("super-1", "journal", "backup", home.At("of-today.backup")).Code.ShouldBe(0);
        home.As("nurse-1", "report", "list").Code.ShouldBe(0); // one event more than the backup has

        CommandRun drill = home.As("super-1", "journal", "restore", home.At("of-today.backup"), "--home", home.At("drill"));

        drill.Code.ShouldBe(0, drill.Error);
        home.As("super-1", "report", "list", "--home", home.At("drill")).Code.ShouldBe(0);
        home.As("super-1", "journal", "verify", "--home", home.At("drill")).Code.ShouldBe(0);
        home.As("aide-7", "report", "list").Code.ShouldBe(0);
        home.As("super-1", "journal", "verify").Code.ShouldBe(0);
    }

    [Fact]
    public void An_aide_restores_nothing_and_a_supervisor_is_told_what_is_lost()
    {
        home.As("super-1", "journal", "backup", home.At("old.backup")).Code.ShouldBe(0);
        home.As("nurse-1", "report", "list").Code.ShouldBe(0);
        File.Delete(home.Folder.JournalFile);

        home.As("aide-7", "journal", "restore", home.At("old.backup")).Error.ShouldContain("only a supervisor or the recovery key restores a backup");
        CommandRun restored = home.As("super-1", "journal", "restore", home.At("old.backup"));

        restored.Code.ShouldBe(0, restored.Error);
        restored.Error.ShouldContain("events that this device has seen are not in this backup");
        home.As("super-1", "journal", "audit").Out.ShouldMatch("super-1 restored a backup of [0-9]+ entries; [0-9]+ entries that were there are not in it");
    }

    [Fact]
    public void A_printed_page_shows_later_whether_the_record_was_put_back()
    {
        CommandRun page = home.As("nurse-1", "handover", "--page", home.At("handover.html"));
        page.Code.ShouldBe(0, page.Error);
        Match printed = Anchor().Match(File.ReadAllText(home.At("handover.html")));
        printed.Success.ShouldBeTrue();
        string anchor = $"{printed.Groups[1].Value}:{printed.Groups[2].Value}";

        home.As("super-1", "journal", "verify", "--printed", anchor).Code.ShouldBe(0);
        CommandRun other = home.As("super-1", "journal", "verify", "--printed", $"{printed.Groups[1].Value}:00000000");
        other.Code.ShouldBe(1);
        other.Error.ShouldContain("is not the one on the page");
    }

    [GeneratedRegex("up to entry ([0-9,]+) \\(([0-9a-f]{8})\\)")]
    private static partial Regex Anchor();
}
