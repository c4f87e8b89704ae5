using System.Buffers.Binary;
using System.Security.Cryptography;
using HandsFree.Store.Keys;
using HandsFree.Store.Devices;
using HandsFree.Store.Sealing;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Keeps one view of a journal, sealed, in a file beside it: one for each role, signed by who made it. Whoever may open the journal
/// could leave something out of a view, so nobody believes a view of somebody who may do less than she. It may be thrown away at any time.
/// <see cref="SealedFile"/> "HFV3": the number is that of the last event in the view, the place is that event's hash: a view of another journal, or
/// of another past, does not open. Inside: the maker's number (4, big-endian; 0 as long as nobody is set up), her signature (64), the view.</summary>
internal static class JournalView
{
    private const int SignatureSize = 64;
    private const int Before = sizeof(int) + SignatureSize;
    private static readonly SealedFile Form = new([.. "HFV3"u8], [.. "handsfree journal view 3"u8]);

    /// <summary>The view and the last event that is in it; null where there is none that fits.</summary>
    public static (long Sequence, byte[] Content)? Load(JournalUnlocked unlocked, SqliteConnection connection, string path)
    {
        byte[] file;
        try
        {
            file = File.ReadAllBytes(Named(unlocked, path));
        }
        catch (FileNotFoundException)
        {
            return null;
        }

        return Form.Number(file) is >= 1 and var sequence
            && JournalRows.Hash(connection, unlocked.Id, sequence) is { } hash
            && Form.Open(unlocked, file, hash) is { Length: >= Before } content
            && IsBelieved(unlocked.Keys, content, hash)
            ? (sequence, content[Before..])
            : null;
    }

    public static void Save(JournalUnlocked unlocked, SqliteConnection connection, string path, long sequence, ReadOnlySpan<byte> content)
    {
        byte[] hash = JournalRows.Hash(connection, unlocked.Id, sequence) ?? throw new ArgumentOutOfRangeException(nameof(sequence));
        byte[] whole = new byte[Before + content.Length];
        if (unlocked.Keys.HolderKeys is { } maker)
        {
            BinaryPrimitives.WriteInt32BigEndian(whole, maker.Number);
            maker.Sign(Signed(hash, content)).CopyTo(whole, sizeof(int));
        }

        content.CopyTo(whole.AsSpan(Before));
        PrivateFile.Replace(Named(unlocked, path), Form.Seal(unlocked, sequence, hash, whole));
    }

    private static string Named(JournalUnlocked unlocked, string path) =>
        unlocked.Holder is { } holder ? $"{path}.{holder.Role.ToString().ToLowerInvariant()}" : path;

    private static bool IsBelieved(KeysInForce keys, byte[] content, byte[] hash) =>
        keys.Holder is not { } holder
        || (keys.Chain.Current!.ByNumber(BinaryPrimitives.ReadInt32BigEndian(content)) is { } maker
            && maker.Role >= holder.Role
            && PublicKeys.HasSigned(maker.Signs, Signed(hash, content.AsSpan(Before)), content.AsSpan(sizeof(int), SignatureSize)));

    private static byte[] Signed(byte[] hash, ReadOnlySpan<byte> content) => [.. "HFV3"u8, .. hash, .. SHA256.HashData(content)];
}
