using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using HandsFree.Store.Sealing;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>The rows of a journal file.</summary>
internal static class JournalRows
{
    /// <summary>The question for the last event's number and hash.</summary>
    public const string LastEvent = "SELECT sequence, hash FROM event ORDER BY sequence DESC LIMIT 1;";

    public static byte[] Id(SqliteConnection connection) =>
        connection.Rows("SELECT id FROM journal;", row => row.GetFieldValue<byte[]>(0)).Single();

    public static void SetId(SqliteConnection connection, byte[] id) => connection.Run("INSERT INTO journal (id) VALUES ($0);", id);

    /// <summary>The last event's number and hash; 0 and the chain's beginning where there is none.</summary>
    public static (long Sequence, byte[] Hash) Last(SqliteConnection connection, byte[] journal) =>
        connection.Rows(LastEvent, row => (row.GetInt64(0), row.GetFieldValue<byte[]>(1)))
            .DefaultIfEmpty((0, EventHeader.Beginning(journal))).First();

    /// <summary>The hash of one event, the chain's beginning for 0; null where there is no such event.</summary>
    public static byte[]? Hash(SqliteConnection connection, byte[] journal, long sequence) => sequence == 0
        ? EventHeader.Beginning(journal)
        : connection.Rows("SELECT hash FROM event WHERE sequence = $0;", row => row.GetFieldValue<byte[]>(0), sequence).FirstOrDefault();

    /// <summary>All epochs by their number.</summary>
    public static Dictionary<long, Epoch> Epochs(SqliteConnection connection) => connection.Rows(
        "SELECT epoch.number, public_key, salt, generation FROM epoch JOIN device ON device.number = epoch.device;",
        row => (Number: row.GetInt64(0), Epoch: new Epoch(DeviceState.IdOf(row.GetFieldValue<byte[]>(1)), row.GetFieldValue<byte[]>(2), row.GetInt32(3))))
        .ToDictionary(each => each.Number, each => each.Epoch);

    /// <summary>The columns of an event, in the order of <see cref="Event"/>.</summary>
    public const string EventColumns = "sequence, epoch, counter, keyring, writer, body, hash, signature";

    public static SealedEvent Event(SqliteDataReader row) => new(
        row.GetInt64(0), row.GetInt64(1), row.GetInt64(2), row.GetInt64(3), row.GetInt64(4),
        row.GetFieldValue<byte[]>(5), row.GetFieldValue<byte[]>(6), row.GetFieldValue<byte[]>(7));

    /// <summary>The device's number, given now where it has none.</summary>
    public static long Device(SqliteConnection connection, byte[] publicKey)
    {
        connection.Run("INSERT OR IGNORE INTO device (public_key) VALUES ($0);", publicKey);
        return connection.Rows("SELECT number FROM device WHERE public_key = $0;", row => row.GetInt64(0), publicKey).Single();
    }

    /// <summary>A new epoch's number.</summary>
    public static long AddEpoch(SqliteConnection connection, long device, Epoch epoch) => connection.Rows(
        "INSERT INTO epoch (device, salt, generation) VALUES ($0, $1, $2) RETURNING number;",
        row => row.GetInt64(0), device, epoch.Salt, (long)epoch.Generation).Single();

    public static JournalHead? Head(SqliteConnection connection) => connection.Rows(
        "SELECT device, sequence, hash, signature FROM head;",
        row => new JournalHead(row.GetInt64(0), row.GetInt64(1), row.GetFieldValue<byte[]>(2), row.GetFieldValue<byte[]>(3))).FirstOrDefault();

    /// <summary>The public keys of all devices that have written, by their number.</summary>
    public static Dictionary<long, byte[]> Devices(SqliteConnection connection) => connection.Rows(
        "SELECT number, public_key FROM device;", row => (row.GetInt64(0), row.GetFieldValue<byte[]>(1))).ToDictionary(d => d.Item1, d => d.Item2);

    /// <summary>What SQLite finds wrong with the file's pages and tables.</summary>
    public static IEnumerable<string> Integrity(SqliteConnection connection, int most) => connection.Rows(
        $"PRAGMA integrity_check({most});", row => row.GetString(0)).Where(line => line != "ok").Select(line => $"SQLite: {line.ReplaceLineEndings(" ")}");

    /// <summary>All events, one at a time from the disk.</summary>
    public static IEnumerable<SealedEvent> Events(SqliteConnection connection)
    {
        using SqliteCommand command = connection.Command($"SELECT {EventColumns} FROM event ORDER BY sequence;", []);
        using SqliteDataReader reader = command.ExecuteReader();
        while (reader.Read())
        {
            yield return Event(reader);
        }
    }

    public static KeySlot? Slot(SqliteConnection connection, byte[] id) =>
        connection.Rows("SELECT id, kind, salt, sealed FROM key_slot WHERE id = $0;", Slot, id).FirstOrDefault();

    /// <summary>All slots.</summary>
    public static List<KeySlot> Slots(SqliteConnection connection) => connection.Rows("SELECT id, kind, salt, sealed FROM key_slot;", Slot);

    private static KeySlot Slot(SqliteDataReader row) => new(
        row.GetFieldValue<byte[]>(0), (KeySlotKind)row.GetInt64(1), row.GetFieldValue<byte[]>(2), row.GetFieldValue<byte[]>(3));

    public static void SetSlot(SqliteConnection connection, KeySlot slot) => connection.Run(
        "INSERT OR REPLACE INTO key_slot (id, kind, salt, sealed) VALUES ($0, $1, $2, $3);", slot.Id, (long)slot.Kind, slot.Salt, slot.Sealed);

    /// <summary>All keyrings, the oldest first.</summary>
    public static List<KeyringRow> Keyrings(SqliteConnection connection) => connection.Rows(
        "SELECT version, body, signer, signature FROM keyring ORDER BY version;",
        row => new KeyringRow(row.GetInt32(0), row.GetFieldValue<byte[]>(1), row.GetInt32(2), row.GetFieldValue<byte[]>(3)));

    /// <summary>The number of the keyring in force; 0 as long as nobody is set up.</summary>
    public static long KeyringVersion(SqliteConnection connection) =>
        connection.Rows("SELECT COALESCE(MAX(version), 0) FROM keyring;", row => row.GetInt64(0)).Single();

    public static void AddKeyring(SqliteConnection connection, KeyringRow row) => connection.Run(
        "INSERT INTO keyring (version, body, signer, signature) VALUES ($0, $1, $2, $3);", (long)row.Version, row.Body, (long)row.Signer, row.Signature);

    /// <summary>The keyring under which an event was written; 0 for the beginning.</summary>
    public static long KeyringOf(SqliteConnection connection, long sequence) =>
        connection.Rows("SELECT keyring FROM event WHERE sequence = $0;", row => row.GetInt64(0), sequence).FirstOrDefault();

    /// <summary>The tables and their guards, as SQLite keeps them.</summary>
    public static List<string> Schema(SqliteConnection connection) =>
        connection.Rows("SELECT type || ' ' || name || ': ' || COALESCE(sql, '') FROM sqlite_schema ORDER BY name;", row => row.GetString(0));

    public static void RemoveSlot(SqliteConnection connection, byte[] id) => connection.Run("DELETE FROM key_slot WHERE id = $0;", id);

    private static void Run(this SqliteConnection connection, string statement, params object[] values)
    {
        using SqliteCommand command = connection.Command(statement, values);
        command.ExecuteNonQuery();
    }

    private static List<T> Rows<T>(this SqliteConnection connection, string question, Func<SqliteDataReader, T> read, params object[] values)
    {
        using SqliteCommand command = connection.Command(question, values);
        using SqliteDataReader reader = command.ExecuteReader();
        List<T> rows = [];
        while (reader.Read())
        {
            rows.Add(read(reader));
        }

        return rows;
    }

    private static SqliteCommand Command(this SqliteConnection connection, string text, object[] values)
    {
        SqliteCommand command = connection.CreateCommand();
        command.CommandText = text;
        for (int i = 0; i < values.Length; i++)
        {
            command.Parameters.AddWithValue($"${i}", values[i]);
        }

        return command;
    }
}
