namespace HandsFree.Store.Devices;

/// <summary>How a journal ended when this device last saw it in its place.</summary>
/// <param name="Sequence">The last event's number.</param>
/// <param name="Hash">Its hash.</param>
/// <param name="Keyring">The number of the keyring in force; 0 as long as nobody is set up.</param>
/// <param name="KeyringHash">Its hash.</param>
/// <param name="Tries">How often the count of wrong PINs was written.</param>
internal sealed record SeenHead(long Sequence, byte[] Hash, long Keyring, byte[] KeyringHash, long Tries);
