using HandsFree.Store.Sealing;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>The statements of an append, prepared once for an opening.</summary>
internal sealed class JournalInsert : IDisposable
{
    private readonly SqliteCommand _last;
    private readonly SqliteCommand _insert;
    private readonly SqliteCommand _head;

    public JournalInsert(SqliteConnection connection)
    {
        _last = connection.CreateCommand();
        _last.CommandText = JournalRows.LastEvent;
        _insert = Command(
            connection,
            $"INSERT INTO event ({JournalRows.EventColumns}) VALUES ($0, $1, $2, $3, $4, $5, $6, $7);",
            SqliteType.Integer, SqliteType.Integer, SqliteType.Integer, SqliteType.Integer, SqliteType.Integer, SqliteType.Blob, SqliteType.Blob, SqliteType.Blob);
        _head = Command(
            connection,
            "INSERT OR REPLACE INTO head (one, device, sequence, hash, signature) VALUES (1, $0, $1, $2, $3);",
            SqliteType.Integer, SqliteType.Integer, SqliteType.Blob, SqliteType.Blob);
    }

    /// <summary>The last event's number and hash; null where there is none.</summary>
    public (long Sequence, byte[] Hash)? Last(SqliteTransaction transaction)
    {
        _last.Transaction = transaction;
        using SqliteDataReader reader = _last.ExecuteReader();
        return reader.Read() ? (reader.GetInt64(0), reader.GetFieldValue<byte[]>(1)) : null;
    }

    public void Add(SqliteTransaction transaction, SealedEvent next) =>
        Run(_insert, transaction, next.Sequence, next.Epoch, next.Counter, next.Keyring, next.Writer, next.Body, next.Hash, next.Signature);

    public void SetHead(SqliteTransaction transaction, JournalHead head) =>
        Run(_head, transaction, head.Device, head.Sequence, head.Hash, head.Signature);

    public void Dispose()
    {
        _last.Dispose();
        _insert.Dispose();
        _head.Dispose();
    }

    private static SqliteCommand Command(SqliteConnection connection, string text, params ReadOnlySpan<SqliteType> types)
    {
        SqliteCommand command = connection.CreateCommand();
        command.CommandText = text;
        for (int i = 0; i < types.Length; i++)
        {
            command.Parameters.Add($"${i}", types[i]);
        }

        return command;
    }

    private static void Run(SqliteCommand command, SqliteTransaction transaction, params ReadOnlySpan<object> values)
    {
        command.Transaction = transaction;
        for (int i = 0; i < values.Length; i++)
        {
            command.Parameters[i].Value = values[i];
        }

        command.ExecuteNonQuery();
    }
}
