using System.Buffers.Binary;
using System.Security.Cryptography;

namespace HandsFree.Store.Keys;

/// <summary>A data key sealed to one member's public key, so that who changes it needs nobody's PIN: an ephemeral ECDH P-256 key (NIST SP
/// 800-56A), HKDF-SHA-256 of the shared secret salted with the ephemeral public key, AES-256-GCM under that key, which is used once.
/// The box: ephemeral public key (SubjectPublicKeyInfo, 91 bytes), cipher text (32), tag (16).</summary>
internal static class KeyBox
{
    private const int PublicSize = 91;
    private const int TagSize = 16;
    private const int Size = PublicSize + DataKey.Size + TagSize;
    private static readonly byte[] Nonce = new byte[12];

    public static byte[] Seal(DataKey key, byte[] agrees, byte[] journal, int number, int generation)
    {
        using ECDiffieHellman ephemeral = ECDiffieHellman.Create(ECCurve.NamedCurves.nistP256);
        using ECDiffieHellman to = ECDiffieHellman.Create();
        to.ImportSubjectPublicKeyInfo(agrees, out _);
        byte[] open = ephemeral.ExportSubjectPublicKeyInfo();
        using ECDiffieHellmanPublicKey toPublic = to.PublicKey;
        using AesGcm aes = Cipher(ephemeral.DeriveRawSecretAgreement(toPublic), open, journal);
        byte[] box = new byte[Size];
        open.CopyTo(box, 0);
        aes.Encrypt(Nonce, key.Bytes, box.AsSpan(PublicSize, DataKey.Size), box.AsSpan(PublicSize + DataKey.Size), Associated(journal, number, generation));
        return box;
    }

    /// <summary>The data key; null where the box is not hers, or not as it was sealed.</summary>
    public static DataKey? Open(byte[] box, HolderKeys holder, byte[] journal, int generation)
    {
        if (box.Length != Size)
        {
            return null;
        }

        byte[] key = new byte[DataKey.Size];
        try
        {
            using ECDiffieHellman from = ECDiffieHellman.Create();
            from.ImportSubjectPublicKeyInfo(box.AsSpan(0, PublicSize), out _);
            using ECDiffieHellmanPublicKey fromPublic = from.PublicKey;
            using AesGcm aes = Cipher(holder.Shared(fromPublic), box[..PublicSize], journal);
            aes.Decrypt(Nonce, box.AsSpan(PublicSize, DataKey.Size), box.AsSpan(PublicSize + DataKey.Size), key, Associated(journal, holder.Number, generation));
            return new DataKey(key);
        }
        catch (CryptographicException)
        {
            return null;
        }
        finally
        {
            CryptographicOperations.ZeroMemory(key);
        }
    }

    private static AesGcm Cipher(byte[] shared, byte[] open, byte[] journal)
    {
        byte[] key = HKDF.DeriveKey(HashAlgorithmName.SHA256, shared, DataKey.Size, open, [.. "handsfree key box 3"u8, .. journal]);
        AesGcm aes = new(key, TagSize);
        CryptographicOperations.ZeroMemory(key);
        CryptographicOperations.ZeroMemory(shared);
        return aes;
    }

    private static byte[] Associated(byte[] journal, int number, int generation)
    {
        byte[] numbers = new byte[8];
        BinaryPrimitives.WriteInt32BigEndian(numbers, number);
        BinaryPrimitives.WriteInt32BigEndian(numbers.AsSpan(4), generation);
        return [.. "HFX3"u8, .. journal, .. numbers];
    }
}
