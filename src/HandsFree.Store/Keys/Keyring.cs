using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace HandsFree.Store.Keys;

/// <summary>Who may open a journal, from one change on: signed by who made the change, chained to the one before, and named by every event
/// that was written under it.</summary>
/// <param name="Version">1 for the one that the first supervisor made, each next one higher by one.</param>
/// <param name="Before">The hash of the one before; for the first <see cref="None"/>.</param>
/// <param name="Generation">The data key's.</param>
/// <param name="Older">Where this one begins a generation: the data key before, sealed by the new one.</param>
/// <param name="Members">Who.</param>
/// <param name="Devices">The public keys of the devices that may write.</param>
/// <param name="Names">The members' ids, sealed by the data key: a map from number to id.</param>
internal sealed record Keyring(
    int Version, byte[] Before, int Generation, byte[]? Older, IReadOnlyList<Member> Members, IReadOnlyList<byte[]> Devices, byte[] Names)
{
    private const int MostBytes = 4_000_000;

    private static readonly JsonSerializerOptions Options = new()
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        MaxDepth = 8,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
    };

    /// <summary>Its bytes, which are signed and hashed as they are.</summary>
    public byte[] Bytes() => JsonSerializer.SerializeToUtf8Bytes(this, Options);

    /// <summary>The keyring of some bytes; null where they are none.</summary>
    public static Keyring? Read(byte[] bytes)
    {
        try
        {
            return bytes.Length > MostBytes ? null : JsonSerializer.Deserialize<Keyring>(bytes, Options);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The member of that number, or null.</summary>
    public Member? ByNumber(int number) => Members.FirstOrDefault(member => member.Number == number);

    /// <summary>The member whose slot this is, or null.</summary>
    public Member? BySlot(KeySlot slot)
    {
        byte[] hash = slot.Hash;
        return Members.FirstOrDefault(member => member.Kind == slot.Kind && member.Slot.AsSpan().SequenceEqual(hash));
    }

    /// <summary>What stands for a keyring as long as there is none.</summary>
    public static byte[] None(ReadOnlySpan<byte> journal) => SHA256.HashData([.. "HFR3 nobody"u8, .. journal]);

    /// <summary>What is signed.</summary>
    public static byte[] Signed(ReadOnlySpan<byte> journal, ReadOnlySpan<byte> bytes) => [.. "HFR3"u8, .. journal, .. bytes];
}
