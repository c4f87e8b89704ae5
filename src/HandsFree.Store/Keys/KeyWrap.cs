using HandsFree.Core.People;
using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace HandsFree.Store.Keys;

/// <summary>Wraps the data key: AES-256-GCM under a key that is used once, because its salt is new with every wrapping. For a person it is
/// HKDF-SHA-256 over PBKDF2-SHA-256 (600,000 rounds) of the PIN and the device's secret; for the device, of the secret alone; for the
/// recovery key, of that key alone.</summary>
internal sealed class KeyWrap(byte[] journal, byte[]? deviceSecret)
{
    /// <summary>Rounds of PBKDF2 (OWASP Password Storage Cheat Sheet, 2023, for PBKDF2-HMAC-SHA256).</summary>
    public const int Rounds = 600_000;

    private const int IdSize = 16;
    private const int TagSize = 16;
    private static readonly byte[] Nonce = new byte[12];

    /// <summary>The slot of a credential and, for a person, of a role.</summary>
    public KeySlot Wrap(DataKey data, Credential credential, Role role)
    {
        byte[] salt = RandomNumberGenerator.GetBytes(32);
        byte[] id = Id(credential);
        KeySlotKind kind = Kind(credential);
        byte[] person = credential is Credential.Person p ? Encoding.UTF8.GetBytes(p.Id) : [];
        byte[] body = [.. data.Bytes, (byte)role, .. person];
        byte[] wrapped = new byte[body.Length + TagSize];
        using AesGcm aes = Cipher(credential, salt);
        aes.Encrypt(Nonce, body, wrapped.AsSpan(0, body.Length), wrapped.AsSpan(body.Length), Associated(id, kind));
        CryptographicOperations.ZeroMemory(body);
        return new KeySlot(id, kind, salt, wrapped);
    }

    /// <summary>The data key and who holds it; null where the PIN or the key is wrong.</summary>
    public (DataKey Key, Holder? Holder)? Unwrap(KeySlot slot, Credential credential)
    {
        if (slot.Sealed.Length < DataKey.Size + 1 + TagSize)
        {
            return null;
        }

        byte[] body = new byte[slot.Sealed.Length - TagSize];
        using AesGcm aes = Cipher(credential, slot.Salt);
        try
        {
            aes.Decrypt(Nonce, slot.Sealed.AsSpan(0, body.Length), slot.Sealed.AsSpan(body.Length), body, Associated(slot.Id, slot.Kind));
        }
        catch (AuthenticationTagMismatchException)
        {
            return null;
        }

        Holder? holder = slot.Kind == KeySlotKind.Person
            ? new Holder(Encoding.UTF8.GetString(body.AsSpan(DataKey.Size + 1)), (Role)body[DataKey.Size])
            : null;
        DataKey data = new(body.AsSpan(0, DataKey.Size));
        CryptographicOperations.ZeroMemory(body);
        return (data, holder);
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
        _ => throw new ArgumentOutOfRangeException(nameof(credential), credential, "no such credential"),
    };

    private byte[] Secret => deviceSecret ?? throw new InvalidOperationException("this needs the device's secret");

    private AesGcm Cipher(Credential credential, byte[] salt)
    {
        byte[] input = credential switch
        {
            Credential.Device => Secret,
            Credential.Person person => [.. Rfc2898DeriveBytes.Pbkdf2(person.Pin.Digits, salt, Rounds, HashAlgorithmName.SHA256, 32), .. Secret],
            Credential.Recovery recovery => recovery.Key.Bytes.ToArray(),
            _ => throw new ArgumentOutOfRangeException(nameof(credential), credential, "no such credential"),
        };
        byte[] key = HKDF.DeriveKey(
            HashAlgorithmName.SHA256, input, DataKey.Size, salt, [.. "handsfree key slot 2"u8, (byte)Kind(credential), .. journal]);
        AesGcm aes = new(key, TagSize);
        CryptographicOperations.ZeroMemory(key);
        return aes;
    }

    private byte[] Associated(byte[] id, KeySlotKind kind)
    {
        byte[] number = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, (int)kind);
        return [.. "HFK2"u8, .. journal, .. id, .. number];
    }
}
