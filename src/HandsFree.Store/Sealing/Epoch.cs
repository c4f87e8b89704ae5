namespace HandsFree.Store.Sealing;

/// <summary>One opening of a journal for writing. Its salt is drawn anew each time, and with it its key.</summary>
/// <param name="Device">Who writes: the first 16 bytes of the SHA-256 of the device's public key.</param>
/// <param name="Salt">32 random bytes.</param>
/// <param name="Generation">The data key's, of which its key is derived.</param>
internal sealed record Epoch(byte[] Device, byte[] Salt, int Generation);
