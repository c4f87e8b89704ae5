using System.Buffers.Binary;

namespace HandsFree.Store.Journaling;

/// <summary>The bytes that a device signs for the chain's end: "HFH3", journal (16), sequence (8, big-endian), hash (32).</summary>
internal static class SignedHead
{
    public static byte[] Bytes(byte[] journal, long sequence, byte[] hash)
    {
        byte[] number = new byte[sizeof(long)];
        BinaryPrimitives.WriteInt64BigEndian(number, sequence);
        return [.. "HFH3"u8, .. journal, .. number, .. hash];
    }
}
