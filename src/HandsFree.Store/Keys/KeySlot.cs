using System.Security.Cryptography;

namespace HandsFree.Store.Keys;

/// <summary>The data key, wrapped for one holder.</summary>
/// <param name="Id">16 bytes that name the holder to who has the device's secret, and to nobody else.</param>
/// <param name="Kind">Who the holder is.</param>
/// <param name="Salt">32 random bytes, new with every wrapping.</param>
/// <param name="Sealed">The wrapped key and the person's id and role.</param>
internal sealed record KeySlot(byte[] Id, KeySlotKind Kind, byte[] Salt, byte[] Sealed)
{
    /// <summary>SHA-256 of the slot, beside it in the file: damage is found without a PIN.</summary>
    public byte[] Hash => SHA256.HashData([.. Id, (byte)Kind, .. Salt, .. Sealed]);
}
