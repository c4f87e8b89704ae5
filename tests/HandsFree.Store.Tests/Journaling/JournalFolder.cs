using System.Text;
using Microsoft.Data.Sqlite;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using Shouldly;

namespace HandsFree.Store.Tests.Journaling;

/// <summary>A temporary folder with one journal's path in it; gone when the test ends.</summary>
internal sealed class JournalFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("handsfree-journal-");

    public string Path => System.IO.Path.Combine(_folder.FullName, "device.journal");

    public string Folder => _folder.FullName;

    /// <summary>The part of the device, in a folder beside.</summary>
    public string States => System.IO.Path.Combine(_folder.FullName, "state");

    /// <summary>The device alone.</summary>
    public JournalAccess Access => new(States, new Credential.Device(), TimeProvider.System);

    /// <summary>Opens the journal and fails the test where it can't be opened.</summary>
    public IJournal Open(JournalOptions? options = null)
    {
        JournalOpening opening = Journal.Open(Path, Access, options);
        opening.Error.ShouldBeNull();
        return opening.Journal!;
    }

    /// <summary>Opens the journal, which must fail, and gives what is wrong.</summary>
    public JournalError OpenBadly(JournalOptions? options = null)
    {
        JournalOpening opening = Journal.Open(Path, Access, options);
        opening.Journal?.Dispose();
        opening.TryGet(out Journal? journal, out JournalError? error).ShouldBeFalse();
        journal.ShouldBeNull();
        return error!;
    }

    /// <summary>Puts a backup where the journal is gone.</summary>
    /// <param name="backup">The backup.</param>
    /// <param name="credential">Who does it; the device alone where null.</param>
    /// <param name="target">Another place than the journal's.</param>
    public (JournalVerdict? Verdict, JournalError? Error) Restore(string backup, Credential? credential = null, string? target = null) =>
        JournalBackup.Restore(backup, target ?? Path, Access with { Credential = credential ?? new Credential.Device() }, null, Told);

    /// <summary>The event that a restore writes, as the tests write it.</summary>
    public static IReadOnlyList<ReadOnlyMemory<byte>> Told(JournalRestoring restoring) =>
        [Encoding.UTF8.GetBytes($"restored {restoring.Events}, lost {restoring.Lost}"), "a supervisor was set up"u8.ToArray()];

    /// <summary>Opens the journal as somebody, which must succeed.</summary>
    public Journal OpenAs(Credential credential)
    {
        JournalOpening opening = Journal.Open(Path, Access with { Credential = credential });
        opening.Error.ShouldBeNull();
        return opening.Journal!;
    }

    /// <summary>The file through SQLite alone, as another program would open it.</summary>
    public SqliteConnection OpenWithSqlite()
    {
        SqliteConnection connection = new($"Data Source={Path};Pooling=False;Default Timeout=1");
        connection.Open();
        return connection;
    }

    public void Dispose()
    {
        foreach (FileInfo file in _folder.EnumerateFiles())
        {
            file.IsReadOnly = false;
        }

        _folder.Delete(recursive: true);
    }
}
