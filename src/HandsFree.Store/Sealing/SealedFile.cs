using System.Buffers.Binary;
using System.Security.Cryptography;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;

namespace HandsFree.Store.Sealing;

/// <summary>A file beside the journal that only its key opens: four letters, a number (8, big-endian), a salt (32), the sealed content
/// (AES-256-GCM, the tag behind). The key is HKDF-SHA-256 of the data key with the salt, which is drawn anew for each file, so the key is
/// used once and the nonce can be zero. Letters, journal, number and what ties the file to its place are authenticated.</summary>
/// <param name="letters">What kind of file: four letters.</param>
/// <param name="purpose">The purpose of its key, for HKDF.</param>
internal sealed class SealedFile(byte[] letters, byte[] purpose)
{
    /// <summary>The bytes of a file with nothing in it; enough for <see cref="Number"/>.</summary>
    public const int Shortest = BodyAt + TagSize;

    private const int NumberAt = 4;
    private const int SaltAt = NumberAt + sizeof(long);
    private const int SaltSize = 32;
    private const int BodyAt = SaltAt + SaltSize;
    private const int TagSize = 16;
    private static readonly byte[] Nonce = new byte[12];

    /// <summary>The number in a file's clear beginning; null where it is no such file.</summary>
    public long? Number(ReadOnlySpan<byte> file) =>
        file.Length >= Shortest && file.StartsWith(letters) ? BinaryPrimitives.ReadInt64BigEndian(file[NumberAt..]) : null;

    /// <summary>The file's bytes.</summary>
    /// <param name="unlocked">The journal.</param>
    /// <param name="number">Stands in the clear.</param>
    /// <param name="place">Ties the file to where it belongs.</param>
    /// <param name="content">What is sealed.</param>
    public byte[] Seal(JournalUnlocked unlocked, long number, ReadOnlySpan<byte> place, ReadOnlySpan<byte> content)
    {
        byte[] file = new byte[BodyAt + content.Length + TagSize];
        letters.CopyTo(file, 0);
        BinaryPrimitives.WriteInt64BigEndian(file.AsSpan(NumberAt), number);
        RandomNumberGenerator.Fill(file.AsSpan(SaltAt, SaltSize));
        using AesGcm aes = Cipher(unlocked, file.AsSpan(SaltAt, SaltSize));
        aes.Encrypt(
            Nonce, content, file.AsSpan(BodyAt, content.Length), file.AsSpan(BodyAt + content.Length), Associated(unlocked, file, place));
        return file;
    }

    /// <summary>The content; null where the file is not as it was sealed, or not where it was.</summary>
    public byte[]? Open(JournalUnlocked unlocked, ReadOnlySpan<byte> file, ReadOnlySpan<byte> place)
    {
        if (Number(file) is null)
        {
            return null;
        }

        byte[] content = new byte[file.Length - BodyAt - TagSize];
        using AesGcm aes = Cipher(unlocked, file.Slice(SaltAt, SaltSize));
        try
        {
            aes.Decrypt(
                Nonce, file.Slice(BodyAt, content.Length), file[(BodyAt + content.Length)..], content, Associated(unlocked, file, place));
            return content;
        }
        catch (AuthenticationTagMismatchException)
        {
            return null;
        }
    }

    private static byte[] Associated(JournalUnlocked unlocked, ReadOnlySpan<byte> file, ReadOnlySpan<byte> place) =>
        [.. file[..NumberAt], .. unlocked.Id, .. file[NumberAt..SaltAt], .. place];

    private AesGcm Cipher(JournalUnlocked unlocked, ReadOnlySpan<byte> salt)
    {
        byte[] key = new byte[DataKey.Size];
        HKDF.DeriveKey(HashAlgorithmName.SHA256, unlocked.Key.Bytes, key, salt, [.. purpose, .. unlocked.Id]);
        AesGcm aes = new(key, TagSize);
        CryptographicOperations.ZeroMemory(key);
        return aes;
    }
}
