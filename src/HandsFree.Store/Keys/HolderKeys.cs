using System.Security.Cryptography;
using System.Text.Json;
using HandsFree.Core.People;

namespace HandsFree.Store.Keys;

/// <summary>A holder's private keys, in memory while the journal is open: one that signs what she does (ECDSA P-256), one to which the data
/// key is sealed (ECDH P-256).</summary>
internal sealed class HolderKeys : IDisposable
{
    private readonly ECDsa signs;
    private readonly ECDiffieHellman agrees;

    private HolderKeys(int number, string person, ECDsa signs, ECDiffieHellman agrees) =>
        (Number, Person, this.signs, this.agrees) = (number, person, signs, agrees);

    /// <summary>Her number in the keyring, used once in the life of a journal.</summary>
    public int Number { get; }

    /// <summary>Her id.</summary>
    public string Person { get; }

    /// <summary>New ones.</summary>
    public static HolderKeys New(int number, string person) =>
        new(number, person, ECDsa.Create(ECCurve.NamedCurves.nistP256), ECDiffieHellman.Create(ECCurve.NamedCurves.nistP256));

    /// <summary>Those of a slot's content, and the founder that it names; null where the content is none.</summary>
    public static (HolderKeys Keys, byte[] Founder)? Read(ReadOnlySpan<byte> content)
    {
        try
        {
            if (JsonSerializer.Deserialize<Content>(content) is not { } read)
            {
                return null;
            }

            ECDsa signs = ECDsa.Create();
            ECDiffieHellman agrees = ECDiffieHellman.Create();
            signs.ImportPkcs8PrivateKey(read.Signs, out _);
            agrees.ImportPkcs8PrivateKey(read.Agrees, out _);
            CryptographicOperations.ZeroMemory(read.Signs);
            CryptographicOperations.ZeroMemory(read.Agrees);
            return (new HolderKeys(read.Number, read.Person, signs, agrees), read.Founder);
        }
        catch (Exception wrong) when (wrong is JsonException or CryptographicException)
        {
            return null;
        }
    }

    /// <summary>What her slot holds.</summary>
    /// <param name="founder">The SHA-256 of the public key that signed the first keyring: she trusts no other beginning.</param>
    public byte[] ForSlot(byte[] founder) =>
        JsonSerializer.SerializeToUtf8Bytes(new Content(Number, Person, founder, signs.ExportPkcs8PrivateKey(), agrees.ExportPkcs8PrivateKey()));

    /// <summary>Her place in the keyring.</summary>
    public Member Member(KeySlotKind kind, Role role, byte[] slot, byte[] box) =>
        new(Number, kind, role, PublicSigning, PublicAgreement, slot, box);

    /// <summary>The public key of her signatures (SubjectPublicKeyInfo).</summary>
    public byte[] PublicSigning => signs.ExportSubjectPublicKeyInfo();

    /// <summary>The public key to which the data key is sealed (SubjectPublicKeyInfo).</summary>
    public byte[] PublicAgreement => agrees.ExportSubjectPublicKeyInfo();

    /// <summary>The founder that a keyring signed by her first has.</summary>
    public byte[] AsFounder => SHA256.HashData(PublicSigning);

    /// <summary>Her signature: ECDSA P-256 over SHA-256, 64 bytes (IEEE P1363).</summary>
    public byte[] Sign(ReadOnlySpan<byte> content)
    {
        lock (signs)
        {
            return signs.SignData(content, HashAlgorithmName.SHA256);
        }
    }

    /// <summary>The secret that she shares with a public key.</summary>
    public byte[] Shared(ECDiffieHellmanPublicKey other)
    {
        lock (agrees)
        {
            return agrees.DeriveRawSecretAgreement(other);
        }
    }

    public void Dispose()
    {
        signs.Dispose();
        agrees.Dispose();
    }

    private sealed record Content(int Number, string Person, byte[] Founder, byte[] Signs, byte[] Agrees);
}
