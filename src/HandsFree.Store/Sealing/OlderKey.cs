using System.Security.Cryptography;
using HandsFree.Store.Keys;

namespace HandsFree.Store.Sealing;

/// <summary>The data key before, sealed by the one after it: who has the new one reads what is old, and not the other way round.</summary>
internal static class OlderKey
{
    private static readonly byte[] Purpose = [.. "handsfree older key 3"u8];

    public static byte[] Seal(DataKey older, DataKey newer, byte[] journal, int generation) =>
        OnceSealed.Seal(newer, Purpose, Place(journal, generation), older.Bytes);

    /// <summary>The key before a generation; null where the bytes are not as they were sealed.</summary>
    public static DataKey? Open(byte[] bytes, DataKey newer, byte[] journal, int generation)
    {
        if (OnceSealed.Open(newer, Purpose, Place(journal, generation), bytes) is not { Length: DataKey.Size } key)
        {
            return null;
        }

        DataKey older = new(key);
        CryptographicOperations.ZeroMemory(key);
        return older;
    }

    private static byte[] Place(byte[] journal, int generation) => [.. journal, (byte)(generation >> 8), (byte)generation];
}
