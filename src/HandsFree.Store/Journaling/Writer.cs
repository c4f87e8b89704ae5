using System.Security.Cryptography;
using HandsFree.Store.Keys;

namespace HandsFree.Store.Journaling;

/// <summary>Who wrote an event, by the journal's own account. It is looked at only where it matters, for that takes a tenth of a
/// millisecond.</summary>
public sealed class Writer
{
    private readonly ECDsa? key;
    private readonly byte[] content;
    private readonly byte[] signature;

    internal Writer(Holder holder, ECDsa? key, byte[] content, byte[] signature) =>
        (Holder, this.key, this.content, this.signature) = (holder, key, content, signature);

    /// <summary>The person and the role that she had then.</summary>
    public Holder Holder { get; }

    /// <summary>Whether the event bears her signature.</summary>
    public bool HasSigned()
    {
        if (key is null)
        {
            return false;
        }

        lock (key)
        {
            return key.VerifyData(content, signature, HashAlgorithmName.SHA256);
        }
    }
}
