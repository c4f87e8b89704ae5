namespace HandsFree.Store.Keys;

/// <summary>A keyring as it lies in the file.</summary>
/// <param name="Version">Its number.</param>
/// <param name="Body">Its bytes.</param>
/// <param name="Signer">The number of the member who signed it: of the keyring before, for the first one of its own.</param>
/// <param name="Signature">ECDSA P-256.</param>
internal sealed record KeyringRow(int Version, byte[] Body, int Signer, byte[] Signature);
