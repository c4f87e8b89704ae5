using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace HandsFree.Store.Keys;

/// <summary>Wraps what a slot holds: AES-256-GCM under a key that is used once, because its salt is new with every wrapping. For a person
/// it is HKDF-SHA-256 over PBKDF2-SHA-256 (600,000 rounds) of PIN or passphrase and the device's secret; for the device, of the secret
/// alone; for a key on paper, of that key alone.</summary>
internal sealed class KeyWrap(byte[] journal, byte[]? deviceSecret)
{
    /// <summary>Rounds of PBKDF2 (OWASP Password Storage Cheat Sheet, 2023, for PBKDF2-HMAC-SHA256).</summary>
    public const int Rounds = 600_000;

    private const int IdSize = 16;
    private const int TagSize = 16;
    private static readonly byte[] Nonce = new byte[12];

    /// <summary>The slot of a credential.</summary>
    public KeySlot Wrap(ReadOnlySpan<byte> content, Credential credential)
    {
        byte[] salt = RandomNumberGenerator.GetBytes(32);
        byte[] id = Id(credential);
        KeySlotKind kind = Kind(credential);
        byte[] wrapped = new byte[content.Length + TagSize];
        using AesGcm aes = Cipher(credential, salt);
        aes.Encrypt(Nonce, content, wrapped.AsSpan(0, content.Length), wrapped.AsSpan(content.Length), Associated(id, kind));
        return new KeySlot(id, kind, salt, wrapped);
    }

    /// <summary>What the slot holds; null where PIN or key is wrong.</summary>
    public byte[]? Unwrap(KeySlot slot, Credential credential)
    {
        if (slot.Sealed.Length < TagSize || slot.Kind != Kind(credential))
        {
            return null;
        }

        byte[] content = new byte[slot.Sealed.Length - TagSize];
        using AesGcm aes = Cipher(credential, slot.Salt);
        try
        {
            aes.Decrypt(Nonce, slot.Sealed.AsSpan(0, content.Length), slot.Sealed.AsSpan(content.Length), content, Associated(slot.Id, slot.Kind));
            return content;
        }
        catch (AuthenticationTagMismatchException)
        {
            return null;
        }
    }

    /// <summary>The slot's name for a credential.</summary>
    public byte[] Id(Credential credential) => credential is Credential.Person person
        ? PersonId(person.Id)
        : [.. new byte[IdSize - 1], (byte)Kind(credential)];

    /// <summary>A person's slot's name: HMAC-SHA-256 of her id with the device's secret.</summary>
    public byte[] PersonId(string person) =>
        HMACSHA256.HashData(Secret, (byte[])[.. "handsfree person"u8, .. journal, .. Encoding.UTF8.GetBytes(person)])[..IdSize];

    private static KeySlotKind Kind(Credential credential) => credential switch
    {
        Credential.Device => KeySlotKind.Device,
        Credential.Person => KeySlotKind.Person,
        Credential.Recovery => KeySlotKind.Recovery,
        Credential.Emergency => KeySlotKind.Emergency,
        _ => throw new ArgumentOutOfRangeException(nameof(credential), credential, "no such credential"),
    };

    private byte[] Secret => deviceSecret ?? throw new InvalidOperationException("this needs the device's secret");

    private AesGcm Cipher(Credential credential, byte[] salt)
    {
        byte[] input = credential switch
        {
            Credential.Device => [.. Secret],
            Credential.Person person => [.. person.Pin.Stretched(salt), .. Secret],
            Credential.Recovery recovery => recovery.Key.Bytes.ToArray(),
            Credential.Emergency emergency => emergency.Key.Bytes.ToArray(),
            _ => throw new ArgumentOutOfRangeException(nameof(credential), credential, "no such credential"),
        };
        byte[] key = HKDF.DeriveKey(
            HashAlgorithmName.SHA256, input, DataKey.Size, salt, [.. "handsfree key slot 3"u8, (byte)Kind(credential), .. journal]);
        AesGcm aes = new(key, TagSize);
        CryptographicOperations.ZeroMemory(key);
        CryptographicOperations.ZeroMemory(input);
        return aes;
    }

    private byte[] Associated(byte[] id, KeySlotKind kind)
    {
        byte[] number = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, (int)kind);
        return [.. "HFK3"u8, .. journal, .. id, .. number];
    }
}
