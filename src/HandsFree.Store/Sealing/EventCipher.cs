using System.Buffers.Binary;
using System.Security.Cryptography;
using HandsFree.Store.Keys;

namespace HandsFree.Store.Sealing;

/// <summary>AES-256-GCM with the key of one epoch: HKDF-SHA-256 (RFC 5869) of the data key, salted with the epoch's salt. The nonce
/// (NIST SP 800-38D, 8.2.1: deterministic) is the counter of the epoch in its last 8 bytes.</summary>
internal sealed class EventCipher : IDisposable
{
    public const int TagSize = 16;
    private const int NonceSize = 12;

    private readonly AesGcm _aes;

    public EventCipher(DataKey data, ReadOnlySpan<byte> journal, Epoch epoch)
    {
        Span<byte> key = stackalloc byte[DataKey.Size];
        HKDF.DeriveKey(HashAlgorithmName.SHA256, data.Bytes, key, epoch.Salt, [.. "handsfree journal events 3"u8, .. journal]);
        _aes = new AesGcm(key, TagSize);
        CryptographicOperations.ZeroMemory(key);
    }

    /// <summary>The cipher text and, behind it, the tag.</summary>
    public byte[] Seal(long counter, ReadOnlySpan<byte> header, ReadOnlySpan<byte> body)
    {
        byte[] sealedBody = new byte[body.Length + TagSize];
        _aes.Encrypt(Nonce(counter), body, sealedBody.AsSpan(0, body.Length), sealedBody.AsSpan(body.Length), header);
        return sealedBody;
    }

    /// <summary>The event; null where bytes or header are not those that were sealed.</summary>
    public byte[]? Open(long counter, ReadOnlySpan<byte> header, ReadOnlySpan<byte> sealedBody)
    {
        if (sealedBody.Length < TagSize)
        {
            return null;
        }

        byte[] body = new byte[sealedBody.Length - TagSize];
        try
        {
            _aes.Decrypt(Nonce(counter), sealedBody[..body.Length], sealedBody[body.Length..], body, header);
            return body;
        }
        catch (AuthenticationTagMismatchException)
        {
            return null;
        }
    }

    public void Dispose() => _aes.Dispose();

    private static byte[] Nonce(long counter)
    {
        byte[] nonce = new byte[NonceSize];
        BinaryPrimitives.WriteInt64BigEndian(nonce.AsSpan(NonceSize - sizeof(long)), counter);
        return nonce;
    }
}
