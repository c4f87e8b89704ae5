using HandsFree.Store.Sealing;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>The statement that adds an event, prepared once for a batch.</summary>
internal sealed class JournalInsert : IDisposable
{
    private readonly SqliteCommand _insert;
    private readonly SqliteParameter[] _values;

    public JournalInsert(SqliteConnection connection)
    {
        _insert = connection.CreateCommand();
        _insert.CommandText = "INSERT INTO event (sequence, epoch, counter, body, hash) VALUES ($sequence, $epoch, $counter, $body, $hash);";
        _values =
        [
            _insert.Parameters.Add("$sequence", SqliteType.Integer),
            _insert.Parameters.Add("$epoch", SqliteType.Integer),
            _insert.Parameters.Add("$counter", SqliteType.Integer),
            _insert.Parameters.Add("$body", SqliteType.Blob),
            _insert.Parameters.Add("$hash", SqliteType.Blob),
        ];
    }

    public void Add(SealedEvent next)
    {
        _values[0].Value = next.Sequence;
        _values[1].Value = next.Epoch;
        _values[2].Value = next.Counter;
        _values[3].Value = next.Body;
        _values[4].Value = next.Hash;
        _insert.ExecuteNonQuery();
    }

    public void Dispose() => _insert.Dispose();
}
