using System.Security.Cryptography;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;

namespace HandsFree.Store.Sealing;

/// <summary>Opens sealed events, with one cipher for each epoch. Not safe for several threads.</summary>
internal sealed class EventOpener(JournalUnlocked unlocked, IReadOnlyDictionary<long, Epoch> epochs) : IDisposable
{
    private readonly KeysInForce keys = unlocked.Keys;
    private readonly Dictionary<long, EventCipher> ciphers = [];
    private readonly Dictionary<long, ECDsa?> writers = [];

    /// <summary>The event; null where it is not as it was sealed, follows another than it did, or was not written under the keys that were in
    /// force.</summary>
    public byte[]? Open(SealedEvent entry, ReadOnlySpan<byte> previous)
    {
        if (!epochs.TryGetValue(entry.Epoch, out Epoch? epoch)
            || previous.Length != SHA256.HashSizeInBytes
            || keys.Chain.HashOf(entry.Keyring) is not { } keyring
            || keys.Chain.GenerationOf(entry.Keyring) != epoch.Generation
            || keys.Chain.Of(entry.Keyring)?.ByNumber((int)entry.Writer) is null != (entry.Keyring == 0)
            || keys.Data.Of(epoch.Generation) is not { } data)
        {
            return null;
        }

        if (!ciphers.TryGetValue(entry.Epoch, out EventCipher? cipher))
        {
            ciphers[entry.Epoch] = cipher = new EventCipher(data, unlocked.Id, epoch);
        }

        Span<byte> header = stackalloc byte[EventHeader.Size];
        EventHeader.Write(header, epoch, entry.Sequence, entry.Counter, keyring, entry.Writer, previous);
        return EventHeader.Hash(header, entry.Body).AsSpan().SequenceEqual(entry.Hash) ? cipher.Open(entry.Counter, header, entry.Body) : null;
    }

    /// <summary>Who wrote it, and how that is looked at; null as long as nobody is set up.</summary>
    public Writer? WriterOf(SealedEvent entry)
    {
        if (keys.WriterOf(entry.Keyring, entry.Writer) is not { } holder)
        {
            return null;
        }

        if (!writers.TryGetValue(entry.Writer, out ECDsa? key))
        {
            writers[entry.Writer] = key = PublicKeys.Of(keys.Chain.Of(entry.Keyring)!.ByNumber((int)entry.Writer)!.Signs);
        }

        return new Writer(holder, key, SealedEvent.Signed(unlocked.Id, entry.Hash), entry.Signature);
    }

    public void Dispose()
    {
        foreach (EventCipher cipher in ciphers.Values)
        {
            cipher.Dispose();
        }
    }
}
