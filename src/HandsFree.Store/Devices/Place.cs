using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace HandsFree.Store.Devices;

/// <summary>What this device remembers of one place in which a journal lies: which journal it is, and how it ended. By place and not by
/// journal, so that a backup that is tried out in another folder leaves the one in use alone. The file: "HFP3" and the journal's id in the
/// first 512 bytes, then two records of 512 bytes, written in turn, so that a torn one leaves the other. A record is the head and an
/// HMAC-SHA-256 of it under a key of the device's secret. It is written after each flush of the journal and never flushed itself before the end: it
/// may be behind the journal, never ahead.</summary>
internal sealed class Place : IDisposable
{
    private const int Sector = 512;
    private const int HashSize = 32;
    private const int HeadSize = 8 + HashSize + 8 + HashSize + 8;
    private static readonly byte[] Letters = [.. "HFP3"u8];

    private readonly SafeFileHandle file;
    private readonly byte[] key;
    private readonly byte[] path;
    private int turn;
    private SeenHead? last;

    private Place(SafeFileHandle file, byte[] key, byte[] path)
    {
        (this.file, this.key, this.path) = (file, key, path);
        last = Read();
    }

    /// <summary>How the journal ended when it was last seen; null where that can't be read.</summary>
    public SeenHead? Last => last;

    /// <summary>The journal that this device has seen in a place; null where it knows of none.</summary>
    /// <exception cref="IOException">The file can't be read.</exception>
    public static byte[]? JournalAt(string states, string path)
    {
        string name = FileOf(states, path);
        if (!File.Exists(name))
        {
            return null;
        }

        byte[] start = new byte[Letters.Length + 16];
        using SafeFileHandle file = File.OpenHandle(name, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        return RandomAccess.Read(file, start, 0) == start.Length && start.AsSpan().StartsWith(Letters) ? start[Letters.Length..] : [];
    }

    /// <summary>The memory of a place; null where there is none, or one of another journal.</summary>
    public static Place? Open(string states, string path, byte[] journal, DeviceState device) =>
        JournalAt(states, path) is { } known && known.AsSpan().SequenceEqual(journal) ? Of(FileOf(states, path), FileMode.Open, path, device) : null;

    /// <summary>A new memory, also where there was another.</summary>
    public static Place Make(string states, string path, byte[] journal, DeviceState device, SeenHead head)
    {
        string name = FileOf(states, path);
        PrivateFile.MakeFolder(Path.GetDirectoryName(name)!);
        byte[] start = new byte[3 * Sector];
        Letters.CopyTo(start, 0);
        journal.CopyTo(start, Letters.Length);
        byte[] record = Record(head, device.KeyFor("handsfree place 3"), PathHash(path));
        record.CopyTo(start, Sector);
        record.CopyTo(start, 2 * Sector);
        PrivateFile.Replace(name, start);
        return Of(name, FileMode.Open, path, device);
    }

    /// <summary>The furthest end of a journal that this device has seen in any place; 0 where none.</summary>
    public static long Furthest(string states, byte[] journal, DeviceState device)
    {
        string folder = Path.Combine(states, "places");
        if (!Directory.Exists(folder))
        {
            return 0;
        }

        long furthest = 0;
        byte[] key = device.KeyFor("handsfree place 3");
        foreach (string name in Directory.EnumerateFiles(folder))
        {
            byte[] content = File.ReadAllBytes(name);
            if (content.Length == 3 * Sector && content.AsSpan(Letters.Length, 16).SequenceEqual(journal))
            {
                byte[] path = Convert.FromHexString(Path.GetFileName(name));
                furthest = new[] { Parsed(content.AsSpan(Sector, Sector), key, path), Parsed(content.AsSpan(2 * Sector, Sector), key, path) }
                    .OfType<SeenHead>().Select(head => head.Sequence).Append(furthest).Max();
            }
        }

        return furthest;
    }

    /// <summary>Forgets a place.</summary>
    public static void Forget(string states, string path) => File.Delete(FileOf(states, path));

    /// <summary>Keeps how the journal ends now; an earlier end than the one that was seen changes nothing.</summary>
    public void Saw(long sequence, byte[] hash, long keyring, byte[] keyringHash)
    {
        if (last is null || sequence > last.Sequence || keyring > last.Keyring)
        {
            Write(new SeenHead(sequence, hash, keyring, keyringHash, last?.Tries ?? 0));
        }
    }

    /// <summary>Keeps how often wrong PINs were counted.</summary>
    public void Counted(long tries)
    {
        if (last is { } head && tries > head.Tries)
        {
            Write(head with { Tries = tries });
        }
    }

    /// <summary>Flushes what was kept to the disk.</summary>
    public void Flush() => RandomAccess.FlushToDisk(file);

    public void Dispose() => file.Dispose();

    private static Place Of(string name, FileMode mode, string path, DeviceState device) =>
        new(File.OpenHandle(name, mode, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete), device.KeyFor("handsfree place 3"), PathHash(path));

    private static string FileOf(string states, string path) => Path.Combine(states, "places", Convert.ToHexStringLower(PathHash(path)));

    private static byte[] PathHash(string path) => SHA256.HashData(Encoding.UTF8.GetBytes(Path.GetFullPath(path)))[..16];

    private static byte[] Record(SeenHead head, byte[] key, byte[] path)
    {
        byte[] record = new byte[HeadSize + HashSize];
        BinaryPrimitives.WriteInt64BigEndian(record, head.Sequence);
        head.Hash.CopyTo(record, 8);
        BinaryPrimitives.WriteInt64BigEndian(record.AsSpan(40), head.Keyring);
        head.KeyringHash.CopyTo(record, 48);
        BinaryPrimitives.WriteInt64BigEndian(record.AsSpan(80), head.Tries);
        Mac(record.AsSpan(0, HeadSize), key, path).CopyTo(record, HeadSize);
        return record;
    }

    private static SeenHead? Parsed(ReadOnlySpan<byte> sector, byte[] key, byte[] path) =>
        CryptographicOperations.FixedTimeEquals(Mac(sector[..HeadSize], key, path), sector.Slice(HeadSize, HashSize))
            ? new SeenHead(
                BinaryPrimitives.ReadInt64BigEndian(sector), sector.Slice(8, HashSize).ToArray(),
                BinaryPrimitives.ReadInt64BigEndian(sector[40..]), sector.Slice(48, HashSize).ToArray(),
                BinaryPrimitives.ReadInt64BigEndian(sector[80..]))
            : null;

    private static byte[] Mac(ReadOnlySpan<byte> head, byte[] key, byte[] path) => HMACSHA256.HashData(key, (byte[])[.. path, .. head]);

    private SeenHead? Read()
    {
        byte[] sectors = new byte[2 * Sector];
        RandomAccess.Read(file, sectors, Sector);
        SeenHead[] whole = [.. new[] { Parsed(sectors.AsSpan(0, Sector), key, path), Parsed(sectors.AsSpan(Sector), key, path) }.OfType<SeenHead>()];
        return whole.Length == 0 ? null : whole.OrderBy(head => head.Keyring).ThenBy(head => head.Sequence).Last() with { Tries = whole.Max(head => head.Tries) };
    }

    private void Write(SeenHead head)
    {
        // Another process may have counted meanwhile.
        last = head with { Tries = Math.Max(head.Tries, Read()?.Tries ?? 0) };
        RandomAccess.Write(file, Record(last, key, path), Sector * (1 + turn));
        turn = 1 - turn;
    }
}
