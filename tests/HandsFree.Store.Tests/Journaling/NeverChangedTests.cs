using HandsFree.Store.Journaling;
using Microsoft.Data.Sqlite;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Journaling;

public sealed class NeverChangedTests : IDisposable
{
    private readonly JournalFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("UPDATE event SET body = x'00' WHERE sequence = 1;", "an event is never changed")]
    [InlineData("UPDATE event SET sequence = 3 WHERE sequence = 2;", "an event is never changed")]
    [InlineData("DELETE FROM event WHERE sequence = 2;", "an event is never deleted")]
    [InlineData("DELETE FROM event;", "an event is never deleted")]
    [InlineData("INSERT INTO event VALUES (4, 1, 9, 0, 0, x'00', x'00', x'');", "an event follows the last one")]
    [InlineData("INSERT OR REPLACE INTO event VALUES (1, 1, 9, 0, 0, x'00', x'00', x'');", "an event follows the last one")]
    public void Another_program_that_opens_the_file_can_not_rewrite_it(string statement, string refusal)
    {
        using (IJournal journal = _folder.Open())
        {
            journal.AppendAll([new byte[] { 1 }, new byte[] { 2 }]);
        }

        using (SqliteConnection connection = _folder.OpenWithSqlite())
        {
            Should.Throw<SqliteException>(() => connection.Run(statement)).Message.ShouldContain(refusal);
        }

        using IJournal after = _folder.Open();
        after.ReadFrom(1).Select(entry => entry.Body.ToArray()).ShouldBe([[1], [2]]);
    }

    [Fact]
    public void Only_bytes_are_taken_as_an_event()
    {
        _folder.Open().Dispose();
        using SqliteConnection connection = _folder.OpenWithSqlite();

        Should.Throw<SqliteException>(() => connection.Run("INSERT INTO event VALUES (1, 1, 1, 0, 0, 'text', x'00', x'');"));
        Should.Throw<SqliteException>(() => connection.Run("INSERT INTO event VALUES (1, 1, 1, 0, 0, NULL, x'00', x'');"));
    }

    [Fact]
    public void An_event_taken_out_by_force_is_named_when_it_is_missed()
    {
        using (IJournal journal = _folder.Open())
        {
            journal.AppendAll([new byte[] { 1 }, new byte[] { 2 }, new byte[] { 3 }]);
        }

        using (SqliteConnection connection = _folder.OpenWithSqlite())
        {
            connection.Run("DROP TRIGGER event_is_never_deleted; DELETE FROM event WHERE sequence = 2;");
        }

        using IJournal damaged = _folder.Open();
        Should.Throw<JournalReadException>(() => damaged.ReadFrom(1).ToList()).Message
            .ShouldBe($"journal {_folder.Path}: event 2 is missing, 3 follows; restore the file from a backup");
    }

    [Fact]
    public void A_journal_is_kept_with_a_write_ahead_log_and_its_own_marks()
    {
        _folder.Open().Dispose();
        using SqliteConnection connection = _folder.OpenWithSqlite();

        connection.Ask("PRAGMA journal_mode;").ShouldBe("wal");
        connection.Ask("PRAGMA application_id;").ShouldBe(0x48464A31L);
        connection.Ask("PRAGMA user_version;").ShouldBe(3L);
        Directory.GetFiles(_folder.Folder, "*.new-*").ShouldBeEmpty();
    }
}
