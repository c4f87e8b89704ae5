namespace HandsFree.Store.Sealing;

/// <summary>One event as it lies in the file.</summary>
/// <param name="Sequence">Its number.</param>
/// <param name="Epoch">The epoch's number in the file.</param>
/// <param name="Counter">How many were sealed in the epoch, with this one.</param>
/// <param name="Keyring">The keyring under which it was written; 0 as long as nobody is set up.</param>
/// <param name="Writer">The number of the member who wrote it; 0 as long as nobody is set up.</param>
/// <param name="Body">Cipher text and tag.</param>
/// <param name="Hash">SHA-256 of header and body.</param>
/// <param name="Signature">The writer's, of the hash; empty as long as nobody is set up.</param>
internal readonly record struct SealedEvent(
    long Sequence, long Epoch, long Counter, long Keyring, long Writer, byte[] Body, byte[] Hash, byte[] Signature)
{
    /// <summary>What the writer signs: "HFE3", journal (16), hash (32). The hash names what came before, so a signature holds in one place only.</summary>
    public static byte[] Signed(ReadOnlySpan<byte> journal, ReadOnlySpan<byte> hash) => [.. "HFE3"u8, .. journal, .. hash];
}
