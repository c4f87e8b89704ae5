using HandsFree.App.Files;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Files;

public sealed class AtomicFileTests
{
    [Fact]
    public void A_file_is_replaced_whole_and_is_for_this_user_alone()
    {
        using TemporaryHome folder = new TemporaryHome().With("sound.json", "old and longer");

        AtomicFile.Write(folder.At("sound.json"), "new"u8).ShouldBeNull();

        File.ReadAllText(folder.At("sound.json")).ShouldBe("new");
        Directory.GetFiles(folder.Path).ShouldHaveSingleItem();
        if (!OperatingSystem.IsWindows())
        {
            File.GetUnixFileMode(folder.At("sound.json")).ShouldBe(UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }
    }

    [Fact]
    public void A_file_that_is_there_stays_where_it_must_not_be_overwritten()
    {
        using TemporaryHome folder = new TemporaryHome().With("page.txt", "kept");

        AtomicFile.Write(folder.At("page.txt"), "new"u8, overwrite: false)!.ShouldContain("can't be written");

        File.ReadAllText(folder.At("page.txt")).ShouldBe("kept");
        Directory.GetFiles(folder.Path).ShouldHaveSingleItem();
    }

    [Fact]
    public void The_draft_of_a_program_that_was_killed_goes_with_the_next_write_and_that_of_a_running_one_stays()
    {
        using TemporaryHome folder = new();
        string killed = folder.At("page.html.draft-2147483647-1"); // no system gives that number to a process
        string running = folder.At($"page.html.draft-{Environment.ProcessId}-999999");
        string other = folder.At("page.html.old");
        string[] there = [killed, running, other];
        Array.ForEach(there, file => File.WriteAllText(file, "names and values"));

        AtomicFile.Write(folder.At("page.html"), "page"u8).ShouldBeNull();

        there.Where(File.Exists).ShouldBe([running, other]);
    }

    [Fact]
    public void A_page_that_is_open_in_another_program_is_told_as_that_and_not_as_a_missing_right()
    {
        using TemporaryHome folder = new TemporaryHome().With("page.pdf", "shown");
        string page = folder.At("page.pdf");

        // Source: winerror.h, ERROR_SHARING_VIOLATION is 32 (from memory).
        WriteFault.Of(page, new IOException("busy", unchecked((int)0x80070020)), onWindows: true).ShouldBe($"{page}: is open in another program; close it there and try again, or name another file; nothing was changed");
        WriteFault.Of(page, new UnauthorizedAccessException("denied"), onWindows: true).ShouldContain("is open in another program");
        WriteFault.Of(page, new UnauthorizedAccessException("denied"), onWindows: false).ShouldContain("space and rights");
        WriteFault.Of(folder.At("new.pdf"), new UnauthorizedAccessException("denied"), onWindows: true).ShouldContain("space and rights");
    }
}
