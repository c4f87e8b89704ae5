using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace HandsFree.Store.Journaling;

/// <summary>Looks at a file before it is used as a journal, changing nothing.</summary>
internal static class JournalCheck
{
    private static ReadOnlySpan<byte> SqliteHeader => "SQLite format 3\0"u8;

    /// <summary>What can be seen without SQLite; null where nothing speaks against the file.</summary>
    public static JournalError? File(string path)
    {
        FileInfo file = new(path);
        if (file.Length == 0)
        {
            return JournalErrors.Empty(path);
        }

        if (file.Attributes.HasFlag(FileAttributes.ReadOnly))
        {
            return JournalErrors.FileReadOnly(path);
        }

        Span<byte> start = stackalloc byte[16];
        using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        int read = stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        return start[..read].SequenceEqual(SqliteHeader) ? null : JournalErrors.NotSqlite(path);
    }

    /// <summary>Whether the open file is a journal of a format that is known here; null where it is.</summary>
    public static JournalError? Marks(string path, SqliteConnection connection)
    {
        int application = (int)JournalConnections.Number(connection, "PRAGMA application_id;");
        if (application != JournalSchema.ApplicationId)
        {
            return JournalErrors.OtherApplication(path, application);
        }

        int version = (int)JournalConnections.Number(connection, "PRAGMA user_version;");
        if (version > JournalSchema.Version)
        {
            return JournalErrors.NewerVersion(path, version);
        }

        return version < JournalSchema.Version ? JournalErrors.OlderVersion(path, version) : null;
    }

    /// <summary>What SQLite says of the open file; null where it is a journal that this program may write.</summary>
    public static JournalError? Content(string path, SqliteConnection connection)
    {
        if (Marks(path, connection) is { } wrong)
        {
            return wrong;
        }

        if (raw.sqlite3_db_readonly(connection.Handle, "main") != 0)
        {
            return JournalErrors.FileReadOnly(path);
        }

        if (JournalConnections.Text(connection, "PRAGMA journal_mode = WAL;") != "wal")
        {
            return JournalErrors.NoWal(path);
        }

        // Fails, with SQLite's own reason, where the table is not there or its end can't be read.
        JournalConnections.Number(connection, JournalSchema.LastSequence);
        return null;
    }
}
