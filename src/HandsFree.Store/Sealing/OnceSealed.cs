using System.Security.Cryptography;
using HandsFree.Store.Keys;

namespace HandsFree.Store.Sealing;

/// <summary>Bytes sealed under a key that is used once: a salt (32), then AES-256-GCM of the content, its tag behind. The key is HKDF-SHA-256
/// of a data key with that salt, which is drawn anew each time, so the nonce can be zero.</summary>
internal static class OnceSealed
{
    public const int SaltSize = 32;
    public const int TagSize = 16;

    private static readonly byte[] Nonce = new byte[12];

    /// <summary>Seals.</summary>
    /// <param name="key">The data key.</param>
    /// <param name="purpose">What for, for HKDF: no two uses share a key.</param>
    /// <param name="place">Ties the bytes to where they belong.</param>
    /// <param name="content">What is sealed.</param>
    public static byte[] Seal(DataKey key, ReadOnlySpan<byte> purpose, ReadOnlySpan<byte> place, ReadOnlySpan<byte> content)
    {
        byte[] result = new byte[SaltSize + content.Length + TagSize];
        RandomNumberGenerator.Fill(result.AsSpan(0, SaltSize));
        using AesGcm aes = Cipher(key, purpose, result.AsSpan(0, SaltSize));
        aes.Encrypt(Nonce, content, result.AsSpan(SaltSize, content.Length), result.AsSpan(SaltSize + content.Length), place);
        return result;
    }

    /// <summary>The content; null where the bytes are not as they were sealed, or not where they were.</summary>
    public static byte[]? Open(DataKey key, ReadOnlySpan<byte> purpose, ReadOnlySpan<byte> place, ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length < SaltSize + TagSize)
        {
            return null;
        }

        byte[] content = new byte[bytes.Length - SaltSize - TagSize];
        using AesGcm aes = Cipher(key, purpose, bytes[..SaltSize]);
        try
        {
            aes.Decrypt(Nonce, bytes.Slice(SaltSize, content.Length), bytes[(SaltSize + content.Length)..], content, place);
            return content;
        }
        catch (AuthenticationTagMismatchException)
        {
            return null;
        }
    }

    private static AesGcm Cipher(DataKey data, ReadOnlySpan<byte> purpose, ReadOnlySpan<byte> salt)
    {
        Span<byte> key = stackalloc byte[DataKey.Size];
        HKDF.DeriveKey(HashAlgorithmName.SHA256, data.Bytes, key, salt, purpose);
        AesGcm aes = new(key, TagSize);
        CryptographicOperations.ZeroMemory(key);
        return aes;
    }
}
