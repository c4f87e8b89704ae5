namespace HandsFree.Store.Sealing;

/// <summary>One event as it lies in the file.</summary>
/// <param name="Sequence">Its number.</param>
/// <param name="Epoch">The epoch's number in the file.</param>
/// <param name="Counter">How many were sealed in the epoch, with this one.</param>
/// <param name="Body">Cipher text and tag.</param>
/// <param name="Hash">SHA-256 of header and body.</param>
internal readonly record struct SealedEvent(long Sequence, long Epoch, long Counter, byte[] Body, byte[] Hash);
