using HandsFree.Store.Sealing;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Streams the events of a file over a connection of its own, so that reading never holds up the writer. Each event is opened
/// with the hash of the one before: one that was altered, or moved, is named.</summary>
internal static class JournalReading
{
    public static IEnumerable<JournalEntry> Entries(JournalUnlocked unlocked, long first)
    {
        string path = unlocked.Path;
        using SqliteConnection connection = Guarded(path, () => JournalConnections.Open(path, unlocked.Options, SqliteOpenMode.ReadWrite));
        using SqliteTransaction snapshot = Guarded(path, () => connection.BeginTransaction(deferred: true));
        using EventOpener opener = Guarded(path, () => new EventOpener(unlocked, JournalRows.Epochs(connection)));
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "SELECT sequence, epoch, counter, body, hash FROM event WHERE sequence >= $first ORDER BY sequence;";
        command.Parameters.AddWithValue("$first", first);
        byte[] previous = Guarded(path, () => JournalRows.Hash(connection, unlocked.Id, first - 1)) ?? [];
        using SqliteDataReader reader = Guarded(path, command.ExecuteReader);
        for (long expected = first; Guarded(path, reader.Read); expected++)
        {
            SealedEvent entry = Guarded(path, () => JournalRows.Event(reader));
            if (entry.Sequence != expected)
            {
                throw new JournalReadException(JournalErrors.Gap(path, expected, entry.Sequence));
            }

            byte[] body = opener.Open(entry, previous) ?? throw new JournalReadException(JournalErrors.Altered(path, entry.Sequence));
            previous = entry.Hash;
            yield return new JournalEntry(entry.Sequence, body);
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
