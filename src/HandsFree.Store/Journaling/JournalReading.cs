using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Streams the events of a file over a connection of its own, so that reading never holds up the writer.</summary>
internal static class JournalReading
{
    public static IEnumerable<JournalEntry> Entries(string path, JournalOptions options, long first)
    {
        using SqliteConnection connection = Guarded(path, () => JournalConnections.Open(path, options, SqliteOpenMode.ReadWrite));
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "SELECT sequence, body FROM event WHERE sequence >= $first ORDER BY sequence;";
        command.Parameters.AddWithValue("$first", first);
        using SqliteDataReader reader = Guarded(path, command.ExecuteReader);
        for (long expected = first; Guarded(path, reader.Read); expected++)
        {
            JournalEntry entry = Guarded(path, () => new JournalEntry(reader.GetInt64(0), reader.GetFieldValue<byte[]>(1)));
            if (entry.Sequence != expected)
            {
                throw new JournalReadException(JournalErrors.Gap(path, expected, entry.Sequence));
            }

            yield return entry;
        }
    }

    private static T Guarded<T>(string path, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (SqliteException failure)
        {
            throw new JournalReadException(JournalErrors.From(path, failure), failure);
        }
    }
}
