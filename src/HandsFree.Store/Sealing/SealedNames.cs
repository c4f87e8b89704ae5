using System.Text.Json;
using HandsFree.Store.Keys;

namespace HandsFree.Store.Sealing;

/// <summary>The ids of a keyring's members, sealed by its data key.</summary>
internal static class SealedNames
{
    private static readonly byte[] Purpose = [.. "handsfree names 3"u8];

    public static byte[] Seal(IReadOnlyDictionary<int, string> names, DataKey key, byte[] journal) =>
        OnceSealed.Seal(key, Purpose, journal, JsonSerializer.SerializeToUtf8Bytes(names));

    /// <summary>The ids by number; null where they are not as they were sealed.</summary>
    public static Dictionary<int, string>? Open(Keyring keyring, DataKeys keys, byte[] journal)
    {
        byte[]? names = keys.Of(keyring.Generation) is { } key ? OnceSealed.Open(key, Purpose, journal, keyring.Names) : null;
        return names is null ? null : JsonSerializer.Deserialize<Dictionary<int, string>>(names);
    }
}
