using System.Text;
using HandsFree.Core.People;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using HandsFree.Store.Tests.Journaling;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Time.Testing;
using Shouldly;

namespace HandsFree.Store.Tests.Attacks;

/// <summary>A journal with a supervisor, a nurse and an aide, and what an attacker has: its file, this device's folder, SQLite, the source.</summary>
internal sealed class AttackedHome : IDisposable
{
    private readonly JournalFolder folder = new();

    public static Credential.Person Ann { get; } = Person("ann", "heron lamp 24");

    public static Credential.Person Nell { get; } = Person("nell", "quiet boat 58");

    public static Credential.Person Bea { get; } = Person("bea", "719284");

    public FakeTimeProvider Time { get; } = new(new DateTimeOffset(2026, 3, 3, 12, 0, 0, TimeSpan.Zero));

    public string Path => folder.Path;

    public string Folder => folder.Folder;

    public string States => folder.States;

    public static Credential.Person Person(string id, string text) =>
        new(id, Pin.TryParse(text, out Pin? pin, out string? error) ? pin : throw new ArgumentException(error));

    /// <summary>A journal with one event, which the device alone opens.</summary>
    public AttackedHome Begun()
    {
        using Journal journal = Open(new Credential.Device());
        journal.Append("pulse 72"u8.ToArray());
        return this;
    }

    /// <summary>Ann the supervisor, Nell the nurse and Bea the aide are set up: events 2 to 4. The recovery key on paper is event 5.</summary>
    public (AttackedHome Home, RecoveryKey Paper) WithPeople()
    {
        Begun();
        using Journal journal = Open(new Credential.Device());
        journal.People.Set("ann", Ann.Pin, Role.Supervisor, "ann was set up"u8.ToArray());
        journal.People.Set("nell", Nell.Pin, Role.Nurse, "nell was set up"u8.ToArray());
        journal.People.Set("bea", Bea.Pin, Role.Aide, "bea was set up"u8.ToArray());
        return (this, journal.People.MakeRecovery("recovery key"u8.ToArray()));
    }

    public JournalAccess Access(Credential credential) => new(States, credential, Time);

    public JournalOpening TryOpen(Credential credential, bool accepts = false) => Journal.Open(Path, Access(credential) with { Accepts = accepts });

    public Journal Open(Credential credential)
    {
        JournalOpening opening = TryOpen(credential);
        opening.Error.ShouldBeNull();
        return opening.Journal!;
    }

    /// <summary>Opening must fail; why.</summary>
    public JournalError Refused(Credential credential, bool accepts = false)
    {
        JournalOpening opening = TryOpen(credential, accepts);
        opening.Journal?.Dispose();
        return opening.Error.ShouldNotBeNull();
    }

    public void Append(Credential credential, string text)
    {
        using Journal journal = Open(credential);
        journal.Append(Encoding.UTF8.GetBytes(text));
    }

    public List<string> Texts(Credential credential)
    {
        using Journal journal = Open(credential);
        return [.. journal.ReadFrom(1).Select(entry => Encoding.UTF8.GetString(entry.Body.Span))];
    }

    public IReadOnlyList<string> Findings() => JournalVerification.Verify(Path, States).Verdict!.Findings;

    public string Backup(string name)
    {
        string backup = System.IO.Path.Combine(Folder, name);
        (JournalVerdict? verdict, JournalError? error) = JournalBackup.Make(Path, backup, States);
        error.ShouldBeNull();
        verdict!.Findings.ShouldBeEmpty();
        return backup;
    }

    public (JournalVerdict? Verdict, JournalError? Error) Restore(string backup, Credential credential, string? target = null) =>
        JournalBackup.Restore(backup, target ?? Path, Access(credential), null, JournalFolder.Told);

    /// <summary>Statements as an attacker with SQLite sends them, the guards taken away.</summary>
    public void Force(string statements, string? file = null, params (string Name, object Value)[] values)
    {
        using SqliteConnection connection = Sql(file);
        foreach (string table in new[] { "event", "epoch", "keyring" }.Where(t => statements.Contains($"DELETE FROM {t}", StringComparison.Ordinal) || statements.Contains($"UPDATE {t}", StringComparison.Ordinal)))
        {
            connection.Run($"DROP TRIGGER IF EXISTS {table}_is_never_changed; DROP TRIGGER IF EXISTS {table}_is_never_deleted;");
        }

        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = statements;
        foreach ((string name, object value) in values)
        {
            command.Parameters.AddWithValue(name, value);
        }

        command.ExecuteNonQuery();
    }

    public SqliteConnection Sql(string? file = null)
    {
        SqliteConnection connection = new($"Data Source={file ?? Path};Pooling=False;Default Timeout=1");
        connection.Open();
        return connection;
    }

    /// <summary>A file of this device's folder.</summary>
    public string StateFile(string name) => Directory.GetFiles(States, name, SearchOption.AllDirectories).Single();

    /// <summary>This device's memory of where the journal lies.</summary>
    public string PlaceFile(string ending = "") =>
        Directory.GetFiles(System.IO.Path.Combine(States, "places")).Single(file => System.IO.Path.GetExtension(file) == ending);

    public void Dispose() => folder.Dispose();
}
