using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Tests.Journaling;

/// <summary>Statements as another program would send them.</summary>
internal static class Sqlite
{
    public static void Run(this SqliteConnection connection, string statements)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = statements;
        command.ExecuteNonQuery();
    }

    public static object? Ask(this SqliteConnection connection, string question)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = question;
        return command.ExecuteScalar();
    }
}
