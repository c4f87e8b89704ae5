using HandsFree.Store.Sealing;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>A journal's rows as they are at one moment, over a connection of their own.</summary>
internal sealed class JournalSnapshot : IDisposable
{
    private readonly JournalUnlocked _unlocked;
    private readonly SqliteConnection _connection;
    private readonly SqliteTransaction _transaction;

    public JournalSnapshot(JournalUnlocked unlocked)
    {
        _unlocked = unlocked;
        _connection = Guarded(() => JournalConnections.Open(unlocked.Path, unlocked.Options, SqliteOpenMode.ReadWrite));
        try
        {
            _transaction = Guarded(() => _connection.BeginTransaction(deferred: true));
            Guarded(() =>
            {
                unlocked.Refresh(_connection);
                return 0;
            });
            Epochs = Guarded(() => JournalRows.Epochs(_connection));
        }
        catch
        {
            _transaction?.Dispose();
            _connection.Dispose();
            throw;
        }
    }

    /// <summary>The epochs under which events are sealed, by their number.</summary>
    public IReadOnlyDictionary<long, Epoch> Epochs { get; }

    /// <summary>The events from a number on, one at a time from the disk.</summary>
    /// <exception cref="JournalReadException">The file can't be read or a number is missing.</exception>
    public IEnumerable<ChainedEvent> From(long first)
    {
        using SqliteCommand command = _connection.CreateCommand();
        command.CommandText = $"SELECT {JournalRows.EventColumns} FROM event WHERE sequence >= $first ORDER BY sequence;";
        command.Parameters.AddWithValue("$first", first);
        byte[] previous = Guarded(() => JournalRows.Hash(_connection, _unlocked.Id, first - 1)) ?? [];
        long keyring = Guarded(() => JournalRows.KeyringOf(_connection, first - 1));
        using SqliteDataReader reader = Guarded(command.ExecuteReader);
        Func<SealedEvent?> next = () => reader.Read() ? JournalRows.Event(reader) : null;
        for (long expected = first; Guarded(next) is { } entry; expected++)
        {
            if (entry.Sequence != expected)
            {
                throw new JournalReadException(JournalErrors.Gap(_unlocked.Path, expected, entry.Sequence));
            }

            // Who was removed can write under the keyring before, and under no later one.
            if (entry.Keyring < keyring)
            {
                throw new JournalReadException(JournalErrors.Altered(_unlocked.Path, entry.Sequence));
            }

            yield return new ChainedEvent(entry, previous);
            (previous, keyring) = (entry.Hash, entry.Keyring);
        }
    }

    public void Dispose()
    {
        _transaction.Dispose();
        _connection.Dispose();
    }

    private T Guarded<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (SqliteException failure)
        {
            throw new JournalReadException(JournalErrors.From(_unlocked.Path, failure), failure);
        }
        catch (JournalRemovedException removed)
        {
            throw new JournalReadException(removed.Error, removed);
        }
    }
}
