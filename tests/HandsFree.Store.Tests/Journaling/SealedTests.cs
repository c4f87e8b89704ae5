using System.Text;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Journaling;

public sealed class SealedTests : IDisposable
{
    private readonly JournalFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void No_file_of_the_journal_holds_the_words_of_an_event()
    {
        byte[] words = Encoding.UTF8.GetBytes("pulse seven two of resident 103");
        using (IJournal journal = _folder.Open())
        {
            journal.Append(words);
            Directory.GetFiles(_folder.Folder, "*", SearchOption.AllDirectories).ShouldAllBe(file => !Holds(file, words));
        }

        JournalBackup.Make(_folder.Path, _folder.Path + ".backup", _folder.States).Verdict!.Findings.ShouldBeEmpty();
        Directory.GetFiles(_folder.Folder, "*", SearchOption.AllDirectories).ShouldAllBe(file => !Holds(file, words));
    }

    // Why a nonce can't repeat: the key is derived from 32 random bytes that are drawn at each opening and never used for writing again, and
    // under one key the nonce is a counter that goes up with every sealing, also with one whose write failed.
    [Fact]
    public void No_two_events_share_key_and_nonce_not_even_after_failed_writes_other_openings_and_a_restored_backup()
    {
        string backup = _folder.Path + ".backup";
        using (IJournal journal = _folder.Open(new JournalOptions { PageLimit = 40 }))
        {
            journal.Append("one"u8.ToArray());
            Should.Throw<JournalWriteException>(() => journal.AppendAll([new byte[300_000], new byte[300_000]]));
            journal.Append("two"u8.ToArray());
        }

        JournalBackup.Make(_folder.Path, backup, _folder.States).Error.ShouldBeNull();
        List<(string Salt, long Counter)> used = [];
        Append("three, on the first copy");
        used.AddRange(Used());
        File.Delete(_folder.Path);
        _folder.Restore(backup).Error.ShouldBeNull();
        Append("three, but another one");
        used.AddRange(Used().Where(nonce => !used.Contains(nonce)));

        // Five different sealings that stand, one of them that of the restoring; the one whose write failed took the counter 2.
        used.Count.ShouldBe(5);
        used.Select(nonce => nonce.Salt).Distinct().Count().ShouldBe(4);
        used.Select(nonce => nonce.Counter).ShouldBe([1L, 3L, 1L, 1L, 1L]);
    }

    [Fact]
    public void The_same_event_is_sealed_into_other_bytes_each_time()
    {
        using (IJournal journal = _folder.Open())
        {
            journal.AppendAll([new byte[100], new byte[100]]);
        }

        using SqliteConnection connection = _folder.OpenWithSqlite();
        connection.Ask("SELECT COUNT(DISTINCT body) FROM event;").ShouldBe(2L);
    }

    [Theory]
    [InlineData("UPDATE event SET body = (SELECT body FROM event WHERE sequence = 3) WHERE sequence = 2;", "event 2 is not as it was written")]
    [InlineData("UPDATE event SET counter = 9 WHERE sequence = 2;", "event 2 is not as it was written")]
    [InlineData("UPDATE event SET hash = zeroblob(32) WHERE sequence = 2;", "event 2 is not as it was written")]
    [InlineData("DELETE FROM event WHERE sequence = 2;", "event 2 is missing")]
    [InlineData("DELETE FROM event WHERE sequence = 3;", "events 3 to 3 are missing at the end")]
    [InlineData("DELETE FROM head;", "the signature of the end is missing")]
    [InlineData("UPDATE head SET sequence = 2, hash = (SELECT hash FROM event WHERE sequence = 2);", "the signature of the end is wrong")]
    [InlineData("DELETE FROM key_slot;", "the keys are not as they were written")]
    public void What_was_changed_by_force_is_named_without_a_PIN(string statement, string finding)
    {
        using (IJournal journal = _folder.Open())
        {
            journal.AppendAll([new byte[] { 1 }, new byte[] { 2 }, new byte[] { 3 }]);
        }

        using (SqliteConnection connection = _folder.OpenWithSqlite())
        {
            connection.Run($"DROP TRIGGER event_is_never_changed; DROP TRIGGER event_is_never_deleted; {statement}");
        }

        JournalVerification.Verify(_folder.Path, _folder.States).Verdict!.Findings.ShouldContain(finding);
    }

    [Fact]
    public void A_journal_put_back_to_an_older_copy_is_refused_and_named()
    {
        using (IJournal journal = _folder.Open())
        {
            journal.Append(new byte[] { 1 });
        }

        byte[] older = File.ReadAllBytes(_folder.Path);
        using (IJournal journal = _folder.Open())
        {
            journal.Append(new byte[] { 2 });
        }

        File.WriteAllBytes(_folder.Path, older);

        _folder.OpenBadly().Problem.ShouldBe(JournalProblem.Older);
        JournalVerification.Verify(_folder.Path, _folder.States).Verdict!.Findings
            .ShouldHaveSingleItem().ShouldBe("events 2 to 2 are missing at the end: this device has seen them");
        File.ReadAllBytes(_folder.Path).ShouldBe(older);
    }

    [Fact]
    public void Another_device_is_refused_and_nothing_changes()
    {
        _folder.Open().Dispose();
        byte[] before = File.ReadAllBytes(_folder.Path);
        JournalAccess elsewhere = _folder.Access with { States = Path.Combine(_folder.Folder, "elsewhere") };

        Store.Journaling.Journal.Open(_folder.Path, elsewhere).Error!.Message
            .ShouldBe($"journal {_folder.Path}: written on another device; bring a backup of it in with \"handsfree journal restore\" and its recovery key");
        File.ReadAllBytes(_folder.Path).ShouldBe(before);
    }

    [Fact]
    public void A_backup_overwrites_nothing_and_neither_does_a_restored_one()
    {
        _folder.Open().Dispose();
        string backup = _folder.Path + ".backup";
        JournalBackup.Make(_folder.Path, backup, _folder.States).Error.ShouldBeNull();

        JournalBackup.Make(_folder.Path, backup, _folder.States).Error!.Message.ShouldContain("nothing is overwritten");
        _folder.Restore(backup).Error!.Message.ShouldContain("nothing is overwritten");
    }

    private static bool Holds(string file, byte[] words)
    {
        using FileStream stream = new(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        byte[] content = new byte[stream.Length];
        stream.ReadExactly(content);
        return content.AsSpan().IndexOf(words) >= 0;
    }

    private void Append(string text)
    {
        using IJournal journal = _folder.Open();
        journal.Append(Encoding.UTF8.GetBytes(text));
    }

    private List<(string, long)> Used()
    {
        using SqliteConnection connection = _folder.OpenWithSqlite();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "SELECT hex(salt), counter FROM event JOIN epoch ON epoch.number = event.epoch ORDER BY sequence;";
        using SqliteDataReader reader = command.ExecuteReader();
        List<(string, long)> used = [];
        while (reader.Read())
        {
            used.Add((reader.GetString(0), reader.GetInt64(1)));
        }

        return used;
    }
}
