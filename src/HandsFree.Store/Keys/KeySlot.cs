using System.Security.Cryptography;

namespace HandsFree.Store.Keys;

/// <summary>What one holder's credential opens: her private keys; for the device alone, the data key itself.</summary>
/// <param name="Id">16 bytes that name the holder to who has the device's secret, and to nobody else.</param>
/// <param name="Kind">Who the holder is.</param>
/// <param name="Salt">32 random bytes, new with every wrapping.</param>
/// <param name="Sealed">The wrapped content.</param>
internal sealed record KeySlot(byte[] Id, KeySlotKind Kind, byte[] Salt, byte[] Sealed)
{
    /// <summary>SHA-256 of the slot. It stands in the keyring: a slot that is not in the one in force opens nothing.</summary>
    public byte[] Hash => SHA256.HashData([.. Id, (byte)Kind, .. Salt, .. Sealed]);
}
