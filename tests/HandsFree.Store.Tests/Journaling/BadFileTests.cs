using HandsFree.Store.Journaling;
using Microsoft.Data.Sqlite;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Journaling;

public sealed class BadFileTests : IDisposable
{
    private static readonly JournalOptions Impatient = new() { BusySeconds = 1 };

    private readonly JournalFolder _folder = new();

    private string Journal => $"journal {_folder.Path}: ";

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_file_of_zero_bytes_is_said_to_be_that_and_stays_so()
    {
        File.WriteAllBytes(_folder.Path, []);

        Refused(JournalProblem.Empty, "the file has zero bytes, so it is no journal; restore it from a backup, or move it away to begin a new one");
        new FileInfo(_folder.Path).Length.ShouldBe(0);
    }

    [Theory]
    [InlineData("x")]
    [InlineData("{ \"readings\": [] }, and more text than the header of a database has")]
    public void A_file_that_is_not_sqlite_is_refused_unchanged(string content)
    {
        File.WriteAllText(_folder.Path, content);

        Refused(JournalProblem.NotSqlite, "not a SQLite file; name the right file, or restore it from a backup");
        File.ReadAllText(_folder.Path).ShouldBe(content);
    }

    [Fact]
    public void A_database_of_another_application_is_refused_unchanged()
    {
        using (SqliteConnection connection = _folder.OpenWithSqlite())
        {
            connection.Run("PRAGMA application_id = 1234; CREATE TABLE note (text TEXT);");
        }

        byte[] before = File.ReadAllBytes(_folder.Path);

        Refused(JournalProblem.OtherApplication, "a SQLite file of another application (id 1234); name the right file");
        File.ReadAllBytes(_folder.Path).ShouldBe(before);
    }

    [Fact]
    public void A_journal_of_a_newer_version_is_refused_unchanged()
    {
        _folder.Open().Dispose();
        using (SqliteConnection connection = _folder.OpenWithSqlite())
        {
            connection.Run("PRAGMA user_version = 4;");
        }

        byte[] before = File.ReadAllBytes(_folder.Path);

        Refused(JournalProblem.NewerVersion, "written by a newer version (format 4, this program knows 3); use the newer program");
        File.ReadAllBytes(_folder.Path).ShouldBe(before);
    }

    [Fact]
    public void A_read_only_file_is_refused()
    {
        _folder.Open().Dispose();
        new FileInfo(_folder.Path).IsReadOnly = true;

        Refused(JournalProblem.ReadOnly, "the file is read-only; allow writing to it, or name another folder");
    }

    [Fact]
    public void A_folder_that_does_not_exist_is_named()
    {
        string path = Path.Combine(_folder.Folder, "nowhere", "device.journal");

        JournalError error = Store.Journaling.Journal.Open(path, _folder.Access).Error!;

        error.Message.ShouldBe($"journal {path}: the folder {Path.Combine(_folder.Folder, "nowhere")} does not exist; make it, or name another");
        error.Problem.ShouldBe(JournalProblem.NoAccess);
    }

    [Fact]
    public void A_folder_given_as_the_file_is_named()
    {
        JournalError error = Store.Journaling.Journal.Open(_folder.Folder, _folder.Access).Error!;

        error.Message.ShouldBe($"journal {_folder.Folder}: a folder, not a file; name a file in it");
    }

    [Fact]
    public void A_folder_where_nobody_may_write_is_named()
    {
        // Not even root may make a file in Linux's /proc.
        Assert.SkipUnless(OperatingSystem.IsLinux(), "a folder without write permission for every user is only known on Linux");

        JournalError error = Store.Journaling.Journal.Open("/proc/device.journal", _folder.Access).Error!;

        error.Message.ShouldBe("journal /proc/device.journal: can't be made in its folder (writing is not allowed); allow writing there, or name another folder");
        error.Problem.ShouldBe(JournalProblem.NoAccess);
    }

    [Fact]
    public void A_file_locked_as_a_whole_by_another_program_is_refused_after_the_waiting_time()
    {
        _folder.Open().Dispose();
        using SqliteConnection other = _folder.OpenWithSqlite();
        other.Run("PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE;");

        Refused(JournalProblem.Locked, "locked by another program; close that program, then try again");
    }

    [Fact]
    public void A_truncated_journal_is_said_to_be_damaged()
    {
        using (IJournal journal = _folder.Open())
        {
            journal.Append(new byte[60_000]);
        }

        using (FileStream file = new(_folder.Path, FileMode.Open))
        {
            file.SetLength(4096);
        }

        Refused(JournalProblem.Damaged, "the file is damaged; restore it from a backup");
    }

    [Fact]
    public void A_database_with_the_marks_but_without_the_table_fails_with_one_line()
    {
        using (SqliteConnection connection = _folder.OpenWithSqlite())
        {
            connection.Run($"PRAGMA application_id = {0x48464A31}; PRAGMA user_version = 3; CREATE TABLE other (x);");
        }

        Refused(JournalProblem.Damaged, "not a journal of this program (SQLite Error 1: 'no such table: event'.); restore it from a backup");
    }

    [Theory]
    [InlineData("secret")]
    [InlineData("device-key")]
    public void A_device_s_part_that_is_broken_is_said_and_not_called_a_broken_journal(string part)
    {
        using (IJournal journal = _folder.Open())
        {
            journal.Append(new byte[] { 1 });
        }

        string file = Directory.GetFiles(_folder.States, part, SearchOption.AllDirectories).Single();
        File.WriteAllBytes(file, [.. File.ReadAllBytes(file).Select(b => (byte)~b)]);

        _folder.OpenBadly().Problem.ShouldBe(JournalProblem.OtherDevice);
        (JournalVerdict? verdict, JournalError? error) = JournalVerification.Verify(_folder.Path, _folder.States);
        if (part == "device-key")
        {
            error!.Problem.ShouldBe(JournalProblem.OtherDevice);
            error.Message.ShouldContain("what this device keeps for it can't be read");
        }
        else
        {
            verdict!.Findings.ShouldBe(["what this device remembers of its end is gone"]); // the chain is walked without the secret
        }
    }

    private void Refused(JournalProblem problem, string reason)
    {
        JournalError error = _folder.OpenBadly(Impatient);
        error.Message.ShouldBe(Journal + reason);
        error.Problem.ShouldBe(problem);
    }
}
