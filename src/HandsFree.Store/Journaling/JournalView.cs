using HandsFree.Store.Devices;
using HandsFree.Store.Sealing;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Keeps one view of a journal, sealed, in a file beside it. It may be thrown away at any time. <see cref="SealedFile"/> "HFV2": the
/// number is that of the last event in the view, the place is that event's hash: a view of another journal, or of another past, does not
/// open.</summary>
internal static class JournalView
{
    private static readonly SealedFile Form = new([.. "HFV2"u8], [.. "handsfree journal view 2"u8]);

    /// <summary>The view and the last event that is in it; null where there is none that fits.</summary>
    public static (long Sequence, byte[] Content)? Load(JournalUnlocked unlocked, SqliteConnection connection, string path)
    {
        byte[] file;
        try
        {
            file = File.ReadAllBytes(path);
        }
        catch (FileNotFoundException)
        {
            return null;
        }

        return Form.Number(file) is >= 1 and var sequence
            && JournalRows.Hash(connection, unlocked.Id, sequence) is { } hash
            && Form.Open(unlocked, file, hash) is { } content
            ? (sequence, content)
            : null;
    }

    public static void Save(JournalUnlocked unlocked, SqliteConnection connection, string path, long sequence, ReadOnlySpan<byte> content)
    {
        byte[] hash = JournalRows.Hash(connection, unlocked.Id, sequence) ?? throw new ArgumentOutOfRangeException(nameof(sequence));
        PrivateFile.Replace(path, Form.Seal(unlocked, sequence, hash, content));
    }
}
