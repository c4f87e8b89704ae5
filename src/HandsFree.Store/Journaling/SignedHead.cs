using System.Buffers.Binary;
using System.Security.Cryptography;

namespace HandsFree.Store.Journaling;

/// <summary>The bytes that a device signs for the chain's end: "HFH2", journal (16), sequence (8, big-endian), hash (32).</summary>
internal static class SignedHead
{
    public static byte[] Bytes(byte[] journal, long sequence, byte[] hash)
    {
        byte[] number = new byte[sizeof(long)];
        BinaryPrimitives.WriteInt64BigEndian(number, sequence);
        return [.. "HFH2"u8, .. journal, .. number, .. hash];
    }

    public static bool IsSigned(byte[] publicKey, byte[] head, byte[] signature)
    {
        using ECDsa key = ECDsa.Create();
        try
        {
            key.ImportSubjectPublicKeyInfo(publicKey, out _);
        }
        catch (CryptographicException)
        {
            return false;
        }

        return key.VerifyData(head, signature, HashAlgorithmName.SHA256);
    }
}
