using System.Security.Cryptography;

namespace HandsFree.Store.Keys;

/// <summary>Public keys as they stand in files (SubjectPublicKeyInfo).</summary>
internal static class PublicKeys
{
    /// <summary>Whether the content was signed with the key: ECDSA P-256 over SHA-256. False too where the bytes are no key.</summary>
    public static bool HasSigned(byte[] publicKey, ReadOnlySpan<byte> content, ReadOnlySpan<byte> signature)
    {
        using ECDsa? key = Of(publicKey);
        return key is not null && key.VerifyData(content, signature, HashAlgorithmName.SHA256);
    }

    /// <summary>The key; null where the bytes are none. Who calls disposes of it.</summary>
    public static ECDsa? Of(byte[] publicKey)
    {
        ECDsa key = ECDsa.Create();
        try
        {
            key.ImportSubjectPublicKeyInfo(publicKey, out _);
            return key;
        }
        catch (CryptographicException)
        {
            key.Dispose();
            return null;
        }
    }
}
