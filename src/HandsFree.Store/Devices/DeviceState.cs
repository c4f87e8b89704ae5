using System.Buffers.Binary;
using System.Security.Cryptography;

namespace HandsFree.Store.Devices;

/// <summary>What this device keeps of one journal outside of it, in the user's state folder: the device's secret, the device's signing key,
/// and the head of the chain when it was last seen.</summary>
internal sealed class DeviceState : IDisposable
{
    private const int SecretSize = 32;
    private readonly string _folder;
    private readonly ECDsa _key;
    private long _headSeen;

    private DeviceState(string folder, byte[] secret, ECDsa key)
    {
        _folder = folder;
        Secret = secret;
        _key = key;
        PublicKey = key.ExportSubjectPublicKeyInfo();
        Id = IdOf(PublicKey);
    }

    /// <summary>The device's secret, 32 random bytes.</summary>
    public byte[] Secret { get; }

    /// <summary>The public key of the signatures (SubjectPublicKeyInfo).</summary>
    public byte[] PublicKey { get; }

    /// <summary>16 bytes: the beginning of the public key's SHA-256.</summary>
    public byte[] Id { get; }

    /// <summary>Where wrong PINs are counted.</summary>
    public string LockoutFile => Path.Combine(_folder, "lockout.json");

    private string HeadFile => Path.Combine(_folder, "head");

    public static byte[] IdOf(ReadOnlySpan<byte> publicKey) => SHA256.HashData(publicKey)[..16];

    /// <summary>Whether this device knows the journal.</summary>
    public static bool Exists(string states, byte[] journal) => File.Exists(SecretFile(FolderOf(states, journal)));

    /// <summary>The state of a journal that this device knows.</summary>
    public static DeviceState Open(string states, byte[] journal)
    {
        string folder = FolderOf(states, journal);
        ECDsa key = ECDsa.Create();
        key.ImportPkcs8PrivateKey(PrivateFile.Read(KeyFile(folder)), out _);
        return new DeviceState(folder, PrivateFile.Read(SecretFile(folder)), key);
    }

    /// <summary>A new secret and a new key for a journal that is new here. The secret is written last: without it there is no state.</summary>
    public static DeviceState Make(string states, byte[] journal)
    {
        string folder = FolderOf(states, journal);
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(folder);
        }
        else
        {
            Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        PrivateFile.Write(KeyFile(folder), key.ExportPkcs8PrivateKey());
        byte[] secret = RandomNumberGenerator.GetBytes(SecretSize);
        PrivateFile.Write(SecretFile(folder), secret);
        return new DeviceState(folder, secret, key);
    }

    /// <summary>The signature of a chain's head: ECDSA P-256 over SHA-256, 64 bytes (IEEE P1363).</summary>
    public byte[] Sign(ReadOnlySpan<byte> head)
    {
        lock (_key)
        {
            return _key.SignData(head, HashAlgorithmName.SHA256);
        }
    }

    /// <summary>The head when it was last seen here; null where none was.</summary>
    public (long Sequence, byte[] Hash)? LastHead()
    {
        if (!File.Exists(HeadFile))
        {
            return null;
        }

        byte[] head = PrivateFile.Read(HeadFile);
        return head.Length == 8 + SHA256.HashSizeInBytes ? (BinaryPrimitives.ReadInt64BigEndian(head), head[8..]) : null;
    }

    /// <summary>Keeps a head, if it is beyond the one kept before by this opening.</summary>
    public void Saw(long sequence, byte[] hash)
    {
        if (sequence > _headSeen)
        {
            byte[] head = new byte[8 + hash.Length];
            BinaryPrimitives.WriteInt64BigEndian(head, sequence);
            hash.CopyTo(head, 8);
            PrivateFile.Write(HeadFile, head);
            _headSeen = sequence;
        }
    }

    /// <summary>Forgets the head: a backup is put in the journal's place.</summary>
    public void ForgetHead() => File.Delete(HeadFile);

    public void Dispose()
    {
        CryptographicOperations.ZeroMemory(Secret);
        _key.Dispose();
    }

    private static string FolderOf(string states, byte[] journal) => Path.Combine(states, Convert.ToHexStringLower(journal));

    private static string SecretFile(string folder) => Path.Combine(folder, "secret");

    private static string KeyFile(string folder) => Path.Combine(folder, "device-key");
}
