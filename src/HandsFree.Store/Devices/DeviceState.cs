using System.Security.Cryptography;
using System.Text;

namespace HandsFree.Store.Devices;

/// <summary>What this device keeps of one journal outside of it, in the user's state folder: the device's secret, the device's signing key
/// and the count of wrong PINs. Where the journal lies and how it ended is kept by place (<see cref="Place"/>).</summary>
internal sealed class DeviceState : IDisposable
{
    private const int SecretSize = 32;
    private readonly string folder;
    private readonly ECDsa key;

    private DeviceState(string folder, byte[] secret, ECDsa key)
    {
        this.folder = folder;
        this.key = key;
        Secret = secret;
        PublicKey = key.ExportSubjectPublicKeyInfo();
        Id = IdOf(PublicKey);
    }

    /// <summary>The device's secret, 32 random bytes.</summary>
    public byte[] Secret { get; private set; }

    /// <summary>The public key of the signatures (SubjectPublicKeyInfo).</summary>
    public byte[] PublicKey { get; }

    /// <summary>16 bytes: the beginning of the public key's SHA-256.</summary>
    public byte[] Id { get; }

    /// <summary>Where wrong PINs are counted.</summary>
    public string TriesFile => Path.Combine(folder, "tries");

    public static byte[] IdOf(ReadOnlySpan<byte> publicKey) => SHA256.HashData(publicKey)[..16];

    /// <summary>Whether this device knows the journal.</summary>
    public static bool Exists(string states, byte[] journal) => File.Exists(SecretFile(FolderOf(states, journal)));

    /// <summary>The state of a journal that this device knows.</summary>
    /// <param name="states">Where this device keeps its part of journals.</param>
    /// <param name="journal">The journal.</param>
    /// <param name="hasPeople">Whether somebody is set up: then the secret that was made for that is the one in force, also where the program
    /// was ended before it took the old one's place.</param>
    public static DeviceState Open(string states, byte[] journal, bool hasPeople)
    {
        string folder = FolderOf(states, journal);
        if (File.Exists(NextFile(folder)))
        {
            if (hasPeople)
            {
                File.Move(NextFile(folder), SecretFile(folder), overwrite: true);
            }
            else
            {
                File.Delete(NextFile(folder));
            }
        }

        ECDsa key = ECDsa.Create();
        key.ImportPkcs8PrivateKey(PrivateFile.Read(KeyFile(folder)), out _);
        return new DeviceState(folder, PrivateFile.Read(SecretFile(folder)), key);
    }

    /// <summary>A new secret and a new key for a journal that is new here. The secret is written last: without it there is no state.</summary>
    public static DeviceState Make(string states, byte[] journal, TimeProvider time)
    {
        string folder = FolderOf(states, journal);
        PrivateFile.MakeFolder(folder);
        ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        PrivateFile.Write(KeyFile(folder), key.ExportPkcs8PrivateKey());
        byte[] secret = RandomNumberGenerator.GetBytes(SecretSize);
        DeviceState made = new(folder, secret, key);
        new Lockout(made, null, time).Begin();
        PrivateFile.Write(SecretFile(folder), secret);
        return made;
    }

    /// <summary>Makes another secret, to be put in force by <see cref="Renew"/>: with the first person the slot that the device alone opened is
    /// worth nothing any more, in no copy of the file, because the secret that opens it is gone.</summary>
    public byte[] PrepareRenewal()
    {
        byte[] next = RandomNumberGenerator.GetBytes(SecretSize);
        PrivateFile.Write(NextFile(folder), next);
        return next;
    }

    /// <summary>Puts the secret that was prepared in force. The count of wrong PINs begins anew.</summary>
    public void Renew(byte[] next, TimeProvider time)
    {
        Overwrite(SecretFile(folder));
        File.Move(NextFile(folder), SecretFile(folder), overwrite: true);
        CryptographicOperations.ZeroMemory(Secret);
        Secret = next;
        new Lockout(this, null, time).Begin();
    }

    /// <summary>Forgets the journal for ever: without the secret nobody's PIN opens any copy of it here. Each file is overwritten before it is
    /// deleted; what a disk keeps of overwritten bytes is the disk's.</summary>
    public static void Erase(string states, byte[] journal)
    {
        string folder = FolderOf(states, journal);
        foreach (string file in Directory.GetFiles(folder))
        {
            Overwrite(file);
            File.Delete(file);
        }

        Directory.Delete(folder);
    }

    /// <summary>A key of this device for one purpose: HKDF-SHA-256 of the secret.</summary>
    public byte[] KeyFor(string purpose) => HKDF.DeriveKey(HashAlgorithmName.SHA256, Secret, 32, null, Encoding.UTF8.GetBytes(purpose));

    /// <summary>The signature of a chain's head: ECDSA P-256 over SHA-256, 64 bytes (IEEE P1363).</summary>
    public byte[] Sign(ReadOnlySpan<byte> head)
    {
        lock (key)
        {
            return key.SignData(head, HashAlgorithmName.SHA256);
        }
    }

    public void Dispose()
    {
        CryptographicOperations.ZeroMemory(Secret);
        key.Dispose();
    }

    private static string FolderOf(string states, byte[] journal) => Path.Combine(states, Convert.ToHexStringLower(journal));

    private static string SecretFile(string folder) => Path.Combine(folder, "secret");

    private static string NextFile(string folder) => Path.Combine(folder, "secret.next");

    private static void Overwrite(string file)
    {
        using FileStream stream = new(file, FileMode.Open, FileAccess.Write);
        stream.Write(RandomNumberGenerator.GetBytes((int)stream.Length));
        stream.Flush(flushToDisk: true);
    }

    private static string KeyFile(string folder) => Path.Combine(folder, "device-key");
}
