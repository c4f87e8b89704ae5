using HandsFree.Store.Journaling;
using Microsoft.Data.Sqlite;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Journaling;

public sealed class FailedAppendTests : IDisposable
{
    private readonly JournalFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_full_disk_fails_the_append_and_leaves_what_was_there()
    {
        using (IJournal small = _folder.Open(new JournalOptions { PageLimit = 24 }))
        {
            small.Append(new byte[] { 1 });

            JournalWriteException failure = Should.Throw<JournalWriteException>(() => small.Append(new byte[200_000]));

            failure.Problem.ShouldBe(JournalProblem.DiskFull);
            failure.Message.ShouldBe($"journal {_folder.Path}: the disk is full and nothing was saved; free some space, then say it again");
            small.Count.ShouldBe(1);
            small.Append(new byte[] { 2 }).ShouldBe(2);
        }

        using IJournal journal = _folder.Open();
        journal.ReadFrom(1).Select(entry => entry.Body.ToArray()).ShouldBe([[1], [2]]);
    }

    [Fact]
    public void Several_events_on_a_full_disk_are_appended_all_or_none()
    {
        using IJournal journal = _folder.Open(new JournalOptions { PageLimit = 24 });

        Should.Throw<JournalWriteException>(() => journal.AppendAll([new byte[] { 1 }, new byte[] { 2 }, new byte[200_000]]));

        journal.Count.ShouldBe(0);
        journal.ReadFrom(1).ShouldBeEmpty();
    }

    [Fact]
    public void A_writer_that_does_not_end_fails_the_append_after_the_waiting_time()
    {
        using IJournal journal = _folder.Open(new JournalOptions { BusySeconds = 1 });
        journal.Append(new byte[] { 1 });
        using SqliteConnection other = _folder.OpenWithSqlite();
        other.Run("BEGIN IMMEDIATE;");

        JournalWriteException failure = Should.Throw<JournalWriteException>(() => journal.Append(new byte[] { 2 }));

        failure.Problem.ShouldBe(JournalProblem.Locked);
        failure.Message.ShouldBe($"journal {_folder.Path}: locked by another program; close that program, then try again");
        other.Run("ROLLBACK;");
        journal.Append(new byte[] { 2 }).ShouldBe(2);
    }
}
