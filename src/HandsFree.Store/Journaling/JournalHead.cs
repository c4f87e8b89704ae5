namespace HandsFree.Store.Journaling;

/// <summary>The signed end of the chain, as it lies in the file.</summary>
/// <param name="Device">The device's number in the file.</param>
/// <param name="Sequence">The last event's number.</param>
/// <param name="Hash">Its hash.</param>
/// <param name="Signature">The device's signature of <see cref="SignedHead"/>.</param>
internal sealed record JournalHead(long Device, long Sequence, byte[] Hash, byte[] Signature);
