using System.Buffers.Binary;
using System.Security.Cryptography;
using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Keeps one view of a journal, sealed, in a file beside it. It may be thrown away at any time. The file: "HFV2", sequence of the
/// last event that is in the view (8, big-endian), salt (32), the sealed view; sealed by AES-256-GCM under a key that is used once, with
/// journal, sequence and that event's hash authenticated: a view of another journal, or of another past, does not open.</summary>
internal static class JournalView
{
    private const int SaltAt = 12;
    private const int BodyAt = SaltAt + 32;
    private const int TagSize = 16;
    private static readonly byte[] Nonce = new byte[12];

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

        if (file.Length < BodyAt + TagSize || !file.AsSpan().StartsWith("HFV2"u8))
        {
            return null;
        }

        long sequence = BinaryPrimitives.ReadInt64BigEndian(file.AsSpan(4));
        if (sequence < 1 || JournalRows.Hash(connection, unlocked.Id, sequence) is not { } hash)
        {
            return null;
        }

        byte[] content = new byte[file.Length - BodyAt - TagSize];
        using AesGcm aes = Cipher(unlocked, file.AsSpan(SaltAt, 32));
        try
        {
            aes.Decrypt(Nonce, file.AsSpan(BodyAt, content.Length), file.AsSpan(BodyAt + content.Length), content, Associated(unlocked, sequence, hash));
            return (sequence, content);
        }
        catch (AuthenticationTagMismatchException)
        {
            return null;
        }
    }

    public static void Save(JournalUnlocked unlocked, SqliteConnection connection, string path, long sequence, ReadOnlySpan<byte> content)
    {
        byte[] hash = JournalRows.Hash(connection, unlocked.Id, sequence) ?? throw new ArgumentOutOfRangeException(nameof(sequence));
        byte[] file = new byte[BodyAt + content.Length + TagSize];
        "HFV2"u8.CopyTo(file);
        BinaryPrimitives.WriteInt64BigEndian(file.AsSpan(4), sequence);
        RandomNumberGenerator.Fill(file.AsSpan(SaltAt, 32));
        using AesGcm aes = Cipher(unlocked, file.AsSpan(SaltAt, 32));
        aes.Encrypt(Nonce, content, file.AsSpan(BodyAt, content.Length), file.AsSpan(BodyAt + content.Length), Associated(unlocked, sequence, hash));
        PrivateFile.Replace(path, file);
    }

    private static AesGcm Cipher(JournalUnlocked unlocked, ReadOnlySpan<byte> salt)
    {
        byte[] key = new byte[DataKey.Size];
        HKDF.DeriveKey(HashAlgorithmName.SHA256, unlocked.Key.Bytes, key, salt, [.. "handsfree journal view 2"u8, .. unlocked.Id]);
        AesGcm aes = new(key, TagSize);
        CryptographicOperations.ZeroMemory(key);
        return aes;
    }

    private static byte[] Associated(JournalUnlocked unlocked, long sequence, byte[] hash)
    {
        byte[] number = new byte[sizeof(long)];
        BinaryPrimitives.WriteInt64BigEndian(number, sequence);
        return [.. "HFV2"u8, .. unlocked.Id, .. number, .. hash];
    }
}
