using System.Buffers.Binary;
using System.Security.Cryptography;

namespace HandsFree.Store.Sealing;

/// <summary>The canonical bytes that stand before a sealed event: what is authenticated with it and hashed with it. 140 bytes:
/// "HFJ3", device (16), sequence (8), the epoch's salt (32), counter (8), hash of the keyring (32), number of the writer (8), hash of the
/// event before (32); numbers big-endian.</summary>
internal static class EventHeader
{
    public const int Size = 140;

    private const int PreviousAt = Size - SHA256.HashSizeInBytes;

    public static void Write(
        Span<byte> header, Epoch epoch, long sequence, long counter, ReadOnlySpan<byte> keyring, long writer, ReadOnlySpan<byte> previous)
    {
        "HFJ3"u8.CopyTo(header);
        epoch.Device.CopyTo(header[4..]);
        BinaryPrimitives.WriteInt64BigEndian(header[20..], sequence);
        epoch.Salt.CopyTo(header[28..]);
        BinaryPrimitives.WriteInt64BigEndian(header[60..], counter);
        keyring.CopyTo(header[68..]);
        BinaryPrimitives.WriteInt64BigEndian(header[100..], writer);
        previous.CopyTo(header[PreviousAt..]);
    }

    /// <summary>The event's hash: SHA-256 of the header and the sealed bytes. Who has no key can compute it too.</summary>
    public static byte[] Hash(ReadOnlySpan<byte> header, ReadOnlySpan<byte> sealedBody)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(header);
        hash.AppendData(sealedBody);
        return hash.GetHashAndReset();
    }

    /// <summary>What stands where the first event's previous hash is: it ties the chain to its journal.</summary>
    public static byte[] Beginning(ReadOnlySpan<byte> journal) => SHA256.HashData([.. "HFJ3 begins"u8, .. journal]);
}
