using Microsoft.Data.Sqlite;

namespace HandsFree.Benchmarks.Journals.Faults;

/// <summary>A process that keeps a journal's file locked for a while.</summary>
internal static class LockerProcess
{
    public static int Lock(string folder, int seconds, TextWriter output)
    {
#pragma warning disable CA2000 // The folder stays: who started this process looks at it.
        using SqliteConnection connection = new($"Data Source={new TrialFolder(folder).File};Pooling=False");
#pragma warning restore CA2000
        connection.Open();
        Run(connection, "BEGIN IMMEDIATE;");
        output.WriteLine("locked");
        output.Flush();
        using ManualResetEventSlim pause = new();
        pause.Wait(TimeSpan.FromSeconds(seconds));
        Run(connection, "ROLLBACK;");
        return 0;
    }

    private static void Run(SqliteConnection connection, string statement)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = statement;
        command.ExecuteNonQuery();
    }
}
