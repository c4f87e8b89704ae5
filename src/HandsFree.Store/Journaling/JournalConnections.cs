using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Opens the SQLite connections of a journal file and asks them short questions.</summary>
internal static class JournalConnections
{
    /// <summary>Each commit is flushed before it returns.</summary>
    public const string WithFlush = "PRAGMA synchronous = FULL;";

    /// <summary>A commit is in the system's hands when it returns: a kill loses nothing, a power cut may lose the last ones, in order.</summary>
    public const string WithoutFlush = "PRAGMA synchronous = NORMAL;";

    /// <summary>A connection to a file that exists. Each commit is flushed before it returns (synchronous FULL; on macOS
    /// with the flush that empties the drive's own cache too).</summary>
    public static SqliteConnection Open(string path, JournalOptions options, SqliteOpenMode mode)
    {
        SqliteConnection connection = new(new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = mode,
            Pooling = false,
            DefaultTimeout = options.BusySeconds,
        }.ConnectionString);
        try
        {
            connection.Open();
            Execute(connection, "PRAGMA synchronous = FULL; PRAGMA fullfsync = ON; PRAGMA checkpoint_fullfsync = ON; PRAGMA secure_delete = ON;");
            if (options.PageLimit > 0)
            {
                Execute(connection, $"PRAGMA max_page_count = {options.PageLimit};");
            }

            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    public static void Execute(SqliteConnection connection, string statements)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = statements;
        command.ExecuteNonQuery();
    }

    public static long Number(SqliteConnection connection, string question) =>
        Convert.ToInt64(Ask(connection, question), System.Globalization.CultureInfo.InvariantCulture);

    public static string Text(SqliteConnection connection, string question) => (string)Ask(connection, question);

    private static object Ask(SqliteConnection connection, string question)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = question;
        return command.ExecuteScalar()!;
    }
}
